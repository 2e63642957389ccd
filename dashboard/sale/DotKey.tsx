/** What the dots under a range mean. */
export function DotKey({ surprising, beyond }: { surprising: boolean; beyond: boolean }) {
  return (
    <div class="key dotkey">
      <span>
        <Sample />
        what this bike would fetch if it sold as yours did (paid)
      </span>
      <span>
        <Sample open />
        the same from an asking price
      </span>
      {surprising && (
        <span>
          <Sample ringed />
          far from all else
        </span>
      )}
      {beyond && <span>arrow head: beyond the axis</span>}
    </div>
  );
}

function Sample({ open, ringed }: { open?: boolean; ringed?: boolean }) {
  return (
    <svg width="20" height="20" viewBox="-10 -10 20 20" aria-hidden="true">
      <circle r="4.5" class={open === true ? "ring" : "disc"} />
      {ringed === true && <circle r="8.5" class="ring" />}
    </svg>
  );
}
