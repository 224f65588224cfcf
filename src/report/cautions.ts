// What every sheet and every help text says at its end, and nobody can turn off. Renderers print all of it.

export const CAUTIONS: readonly string[] = [
  'Planning support for qualified coaches, not medical advice.',
  'Stop for pain. A return from injury goes through licensed medical practice.',
  'Minors train under qualified supervision. Follow your local codes of practice.',
];
