import type { components } from "./thalweg.js";

type ValleyRequest = components["schemas"]["ValleyRequest"];
type ValleysAnswer = components["schemas"]["ValleysAnswer"];
type Problem = components["schemas"]["Problem"];

// recipe
/** The valley a visitor types, or what to say beside each field, by its pointer; `typing` is aborted at the next key. */
export async function valley(
  service: string,
  typed: ValleyRequest,
  typing: AbortSignal,
): Promise<ValleysAnswer | Map<string, string>> {
  const response = await fetch(`${service}/v1/valleys`, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify(typed),
    signal: typing,
  });
  if (response.ok) {
    return response.json();
  }
  if (response.headers.get("Content-Type") !== "application/problem+json") {
    throw new Error(`not answered by the service: ${response.status}`);
  }
  const problem: Problem = await response.json();
  return new Map(problem.errors.map(({ pointer, detail }) => [pointer, detail]));
}
// end of recipe
