// Says a sentence aloud, where the browser has a voice.

export const can = () => "speechSynthesis" in window;

/** What is said last counts: it does not wait for what was begun before. */
export function say(words, language) {
  if (!can()) return;
  speechSynthesis.cancel();
  const spoken = new SpeechSynthesisUtterance(words);
  spoken.lang = language;
  speechSynthesis.speak(spoken);
}
