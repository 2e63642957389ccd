/** The name of the house with its sign: a wheel, a spoke, a post, and the goal's flag as a disc. */
export function Word() {
  return (
    <a class="word" href="/">
      <svg
        width="30"
        height="30"
        viewBox="-16 -16 32 32"
        fill="none"
        stroke="currentColor"
        stroke-width="2.4"
        stroke-linecap="round"
        aria-hidden="true"
      >
        <circle r="13.6" />
        <path d="M-4.6 -12.4 L7.6 11 M-12.6 4.4 H12.6" stroke-width="2" />
        <circle cx="4.2" cy="4.4" r="3.6" fill="var(--flag)" stroke-width="2" />
      </svg>
      Spokeworth
    </a>
  );
}
