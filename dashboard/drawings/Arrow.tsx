/** Half the width of an arrow's head, in a drawing's own units. */
const HEAD = 4;

/** An upright line with an arrow's head at both ends, where there is room for them. */
export function Arrow({ x, from, to }: { x: number; from: number; to: number }) {
  const way = Math.sign(to - from);
  const heads = Math.abs(to - from) > 3 * HEAD;
  const head = (y: number, back: number) =>
    `M${x - HEAD} ${y + back * HEAD * 1.4} L${x} ${y} L${x + HEAD} ${y + back * HEAD * 1.4}`;
  return (
    <path class="thin" d={`M${x} ${from} V${to}${heads ? ` ${head(from, way)} ${head(to, -way)}` : ""}`} />
  );
}

/** The same lying down. */
export function LevelArrow({ y, from, to }: { y: number; from: number; to: number }) {
  const head = (x: number, back: number) =>
    `M${x + back * HEAD * 1.4} ${y - HEAD} L${x} ${y} L${x + back * HEAD * 1.4} ${y + HEAD}`;
  return <path class="thin" d={`M${from} ${y} H${to} ${head(from, 1)} ${head(to, -1)}`} />;
}
