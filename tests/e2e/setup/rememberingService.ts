import service from "../../../worker/index.ts";

/** A question as it came, and all that may tell it from another. */
type Question = string;

interface Answer {
  readonly headers: Headers;
  readonly body: string;
}

const answered = new Map<Question, Answer>();

/**
 * The service as deployed, which works each question out once: the same question has the same bytes for an answer (the
 * API's own tests hold it to that), and the pages of all the tests ask the same ones again and again. What is no answer
 * is not remembered.
 */
export default {
  async fetch(request: Request): Promise<Response> {
    if (request.method !== "POST") return service.fetch(request);
    const body = await request.clone().text();
    const question = [request.url, request.headers.get("Content-Type"), body].join(" ");
    const answer = answered.get(question);
    return answer === undefined ? first(question, request) : new Response(answer.body, answer);
  },
};

async function first(question: Question, request: Request): Promise<Response> {
  const response = await service.fetch(request);
  if (response.status === 200) {
    answered.set(question, { headers: response.headers, body: await response.clone().text() });
  }
  return response;
}
