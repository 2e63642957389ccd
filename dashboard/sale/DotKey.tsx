import { DOT_KEY_ASKED, DOT_KEY_BEYOND, DOT_KEY_PAID, DOT_KEY_SURPRISING } from "../words/bands.ts";
/** What the dots under a range mean. */
export function DotKey({ surprising, beyond }: { surprising: boolean; beyond: boolean }) {
  return (
    <div class="key dotkey">
      <span>
        <Sample />
        {DOT_KEY_PAID}
      </span>
      <span>
        <Sample open />
        {DOT_KEY_ASKED}
      </span>
      {surprising && (
        <span>
          <Sample ringed />
          {DOT_KEY_SURPRISING}
        </span>
      )}
      {beyond && <span>{DOT_KEY_BEYOND}</span>}
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
