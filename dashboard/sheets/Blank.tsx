/** A line to write on, or what is known already. */
export function Blank({ label, filled }: { label: string; filled?: string | null | undefined }) {
  return (
    <p class="blank">
      <span>{label}</span>
      <span class="rule">{filled ?? ""}</span>
    </p>
  );
}
