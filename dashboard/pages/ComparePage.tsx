import { Heading } from "../parts/Heading.tsx";

export function ComparePage() {
  return (
    <main class="page" id="main">
      <Heading title="Side by side">Side by side</Heading>
    </main>
  );
}
