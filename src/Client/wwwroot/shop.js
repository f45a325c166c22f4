// The line to the shop: the browser's own fetch.

const patience = 100_000; // ms; no source: as long as .NET waits where nothing else is said

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
    // fetch has one kind of error for everything: no network, nobody there, an answer that broke off
    return null;
  }
}
