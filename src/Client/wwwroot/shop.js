// The line to the shop: the browser's own fetch.

const patience = 100_000; // ms

/** What the shop answers: status, media type, tag and text; null when there is no answer. */
export async function ask(method, path, language, body, type, tag) {
  const headers = { "accept-language": language };
  if (type) headers["content-type"] = type;
  if (tag) headers["if-none-match"] = tag;
  try {
    const answer = await fetch(path, { method, headers, body, signal: AbortSignal.timeout(patience) });
    const kind = (answer.headers.get("content-type") ?? "").split(";")[0].trim().toLowerCase();
    return [`${answer.status}`, kind, answer.headers.get("etag"), await answer.text()];
  } catch {
    return null;
  }
}
