// Whoever types a long password with damp hands may look at it. Without this file the buttons stay hidden.
for (const button of document.querySelectorAll("button[data-shows]")) {
  const field = document.getElementById(button.dataset.shows);
  const show = (shown) => {
    field.type = shown ? "text" : "password";
    button.setAttribute("aria-pressed", String(shown));
  };
  button.addEventListener("click", () => show(field.type === "password"));
  // A browser must not remember it as plain text, nor draw it again when somebody goes back.
  field.form?.addEventListener("submit", () => show(false));
  globalThis.addEventListener("pagehide", () => show(false));
  button.hidden = false;
}
