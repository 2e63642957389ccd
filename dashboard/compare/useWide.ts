import { useEffect, useState } from "preact/hooks";

/**
 * Whether the page is at least so wide, kept up to date.
 * @param least in rem
 */
export function useWide(least: number): boolean {
  const query = `(min-width: ${least}rem)`;
  const [wide, setWide] = useState(() => matchMedia(query).matches);
  useEffect(() => {
    const asked = matchMedia(query);
    const read = () => setWide(asked.matches);
    read();
    asked.addEventListener("change", read);
    return () => asked.removeEventListener("change", read);
  }, [query]);
  return wide;
}
