import { problem } from "./problem.ts";

/**
 * A request's body as text, read no further than a limit whatever its length is declared to be.
 * Answers 413 when there are more bytes than the limit, 400 when they are not UTF-8.
 * @param limitBytes the largest body taken, in bytes
 */
export async function readText(request: Request, limitBytes: number): Promise<string | Response> {
  if (Number(request.headers.get("Content-Length") ?? 0) > limitBytes) return tooLarge(limitBytes);
  // A browser that has no streams of requests leaves the field out: there the answer's stream serves.
  const body = request.body === undefined ? new Response(await request.arrayBuffer()).body : request.body;
  if (body === null) return "";
  const decoder = new TextDecoder("utf-8", { fatal: true, ignoreBOM: false });
  const reader = body.getReader();
  let read = 0;
  let text = "";
  try {
    for (let chunk = await reader.read(); !chunk.done; chunk = await reader.read()) {
      read += chunk.value.byteLength;
      if (read > limitBytes) {
        await reader.cancel();
        return tooLarge(limitBytes);
      }
      text += decoder.decode(chunk.value, { stream: true });
    }
    return text + decoder.decode();
  } catch (error) {
    if (error instanceof TypeError) return problem(400, "Bad Request", "The body is not UTF-8 text.");
    throw error;
  }
}

function tooLarge(limitBytes: number): Response {
  return problem(
    413,
    "Content Too Large",
    `The body may hold at most ${limitBytes} bytes: send fewer entries in one request.`,
  );
}
