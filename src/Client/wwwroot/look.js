// How the person at this device wants it to look. Runs before anything is drawn, from a copy of what the device's store
// keeps: so no page begins in another scheme than it goes on in.
{
  const root = document.documentElement;
  const more = matchMedia("(prefers-contrast: more)");
  const grounds = { light: "#ffffff", dark: "#1b1f22" };
  let chosen = {};

  const attribute = (name, value, unsaid) =>
    value && value !== unsaid ? root.setAttribute(name, value) : root.removeAttribute(name);

  const draw = () => {
    attribute("data-scheme", chosen.scheme, "system");
    attribute("data-contrast", more.matches ? "stronger" : chosen.contrast, "system");
    attribute("data-text", chosen.text, "normal");
    attribute("data-hand", chosen.hand);
    root.lang = chosen.language ?? "en";
    for (const meta of document.querySelectorAll("meta[name=theme-color]"))
      meta.content = grounds[chosen.scheme] ?? grounds[meta.media.includes("dark") ? "dark" : "light"];
  };

  const read = () => {
    try {
      return JSON.parse(localStorage.getItem("look")) ?? {};
    } catch {
      return {}; // no store, or not written by us: the program puts it right when it is up
    }
  };

  window.look = {
    put(scheme, contrast, text, hand, language) {
      chosen = { scheme, contrast, text, hand, language };
      localStorage.setItem("look", JSON.stringify(chosen));
      draw();
    },
    language: () => chosen.language ?? null,
  };
  more.addEventListener("change", draw);
  chosen = read();
  draw();
}
