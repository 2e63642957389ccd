/** Tells the runtime's types which Worker `exports` belongs to. */
declare namespace Cloudflare {
  interface GlobalProps {
    mainModule: typeof import("../../worker/index.ts");
  }
}
