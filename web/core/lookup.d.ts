/** What the rules ask of the techniques. */
export interface Techniques {
  outlines(): string;
  assess_for_judge(technique: string, inputs: string, own: string): string;
}

export function provide(techniques: Techniques): void;
