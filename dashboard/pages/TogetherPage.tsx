import { Heading } from "../parts/Heading.tsx";

export function TogetherPage() {
  return (
    <main class="page" id="main">
      <Heading title="Which together">Which together</Heading>
    </main>
  );
}
