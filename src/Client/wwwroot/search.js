// The dialog of the search: its keys, and that it opens over everything and gives the focus back.

export function listen(listener) {
  addEventListener("keydown", (e) => {
    if ((e.ctrlKey || e.metaKey) && !e.altKey && !e.shiftKey && e.key.toLowerCase() === "k") {
      e.preventDefault();
      listener.invokeMethodAsync("Open");
    }
    // in a field they would move the cursor too
    if (e.key.startsWith("Arrow") && e.target.id === "search-words" && /Up|Down/.test(e.key)) e.preventDefault();
  });
}

export function show(dialog) {
  if (!dialog.open) dialog.showModal();
  dialog.querySelector("input").focus();
}

export const isOpen = (dialog) => dialog.open;

export const hide = (dialog) => dialog.close();

export const reveal = (id) => document.getElementById(id)?.scrollIntoView({ block: "nearest" });
