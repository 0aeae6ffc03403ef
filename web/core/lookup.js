// Where the core finds the techniques, which are a package of their own (web/techniques). Whoever loads the
// two provides the one to the other here.

let provided;

export function provide(techniques) {
  provided = techniques;
}

export function outlines() {
  return provided ? provided.outlines() : '[]';
}

export function assess_for_judge(technique, inputs, own) {
  return provided.assess_for_judge(technique, inputs, own);
}
