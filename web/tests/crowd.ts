// A production as large as they come, all invented: names put together from syllables in several scripts, so that
// lists meet long, short, accented and right-to-left ones.

import type { Api } from './api.ts';

const families = [
  {
    first: ['Ana', 'Béla', 'Çelik', 'Dágmar', 'Éowen', 'Fjóla', 'Gúðný'],
    last: ['Vellamor', 'Østerhage', 'Quintarelho', 'Ñandubay', 'Žilvinaitė'],
  },
  { first: ['Мирослава', 'Тихомир', 'Зоряна', 'Богдан'], last: ['Вересаренко', 'Полынцева', 'Заозёрный'] },
  { first: ['Ευανθία', 'Λεωνίδας', 'Φαίδρα'], last: ['Αλμυροπούλου', 'Κυματάκης', 'Θαλασσινού'] },
  { first: ['سلمى', 'نادر', 'هالة', 'زيد'], last: ['الملّاحي', 'بحراوي', 'الصخري'] },
  { first: ['תמרי', 'אלון', 'נועם'], last: ['מלחמי', 'חולות', 'ים־סופי'] },
  { first: ['白', '藤', '澄'], last: ['潮音', '塩野', '渚沙'] },
  { first: ['다온', '서윤', '하람'], last: ['염', '해', '갈'] },
  { first: ['अनुजा', 'वरुण', 'लवणिका'], last: ['समुद्रे', 'क्षारकर', 'तटवाल'] },
];
const occupations = [
  'rigger',
  'performer, heights',
  'performer, fire and fights',
  'medic',
  'special effects technician',
  'driver',
  'camera assistant',
];

/** Rows of a people roster: X1 and onwards. */
function bigRoster(count: number): string {
  const rows = Array.from({ length: count }, (_, n) => {
    const family = families[n % families.length] as (typeof families)[number];
    const name = `${family.first[n % family.first.length]} ${family.last[(n >> 3) % family.last.length]}`;
    return `X${n + 1},${name} ${n + 1},"${occupations[n % occupations.length]}",${n % 3 === 0 ? 'yes' : 'no'}`;
  });
  return `code,name,occupation,performs\n${rows.join('\n')}\n`;
}

const techniques = ['high-fall', 'ratchet-pull', 'wire-flight', 'full-burn'];

/** The body of a new gag: B1 and onwards. */
function gagNumber(n: number): Record<string, string> {
  return {
    id: crypto.randomUUID(),
    code: `B${n + 1}`,
    title: `Background beat ${n + 1} along the ${n % 2 ? 'northern' : 'southern'} dyke`,
    technique: techniques[n % techniques.length] ?? 'high-fall',
  };
}

/** Adds as many gags and people to the demo's production. */
export async function grow(api: Api, gags: number, people: number): Promise<void> {
  const at = `/productions/${api.production}`;
  await api.post(`${at}/roster/people`, bigRoster(people));
  for (let n = 0; n < gags; n += 10) {
    const ten = Array.from({ length: Math.min(10, gags - n) }, (_, i) => gagNumber(n + i));
    await Promise.all(ten.map((gag) => api.post(`${at}/gags`, gag)));
  }
}
