// Which surfaces don't give. A coach writes a surface in words of their own, so the hard ones are known by name. Read by
// the stage that writes the lines and by the audit.

/** Common practice (C): the source asks for a floor that takes up shock (G8, P) and names no list. */
const HARD = new Set([
  'asphalt',
  'bitumen',
  'brick',
  'bricks',
  'cement',
  'cobbles',
  'concrete',
  'flagstones',
  'granite',
  'marble',
  'pavement',
  'paving',
  'stone',
  'tarmac',
  'terrazzo',
  'tile',
  'tiled',
  'tiles',
]);

/** Whether any word of a surface names one that doesn't give. A surface nobody wrote isn't taken for one. */
export function isHardSurface(surface: string | undefined): boolean {
  return (
    surface !== undefined &&
    surface
      .toLowerCase()
      .split(/[^a-z]+/u)
      .some((word) => HARD.has(word))
  );
}
