// The jobs as this device showed them last, before the program is up: who taps one is taken there as soon as it is.
{
  const name = "last jobs";
  const read = () => {
    try {
      return JSON.parse(localStorage.getItem(name));
    } catch {
      return null; // no store, or not written by us
    }
  };

  const element = (kind, look, ...within) => {
    const made = document.createElement(kind);
    made.className = look;
    made.append(...within);
    return made;
  };

  const card = ({ href, machine, state, about }) => {
    const line = element("span", "job-line", element("strong", "", machine), element("span", "soft", state));
    const link = element("a", "job-card", line, element("span", "soft", about));
    link.href = href;
    return link;
  };

  let chosen = null;

  function draw({ title, note, opens, jobs }) {
    const said = element("p", "soft", note);
    said.role = "status";
    const list = element("ul", "jobs", ...jobs.map((job) => element("li", "", card(job))));
    const main = element("main", "sheet starting last", element("h1", "", title), said, list);
    main.ariaBusy = "true";
    main.addEventListener("click", (tap) => {
      const link = tap.target.closest("a");
      if (!link) return;
      tap.preventDefault();
      chosen = link.href;
      for (const other of list.querySelectorAll("a")) other.ariaCurrent = other === link ? "true" : null;
      said.textContent = opens;
    });
    const brand = element("span", "brand", "Witnessmark");
    document.getElementById("app").replaceChildren(element("div", "page", element("header", "nav", brand), main));
  }

  window.lastJobs = {
    keep: (text) => (text ? localStorage.setItem(name, text) : localStorage.removeItem(name)),
    chosen: () => chosen,
  };
  const kept = location.href === document.baseURI ? read() : null;
  if (kept?.jobs?.length) draw(kept);
}
