// The page on which a groom is told, for a phone with a bad line. Everything works without this file; with it, one tap writes a
// time without a round trip, what was tapped survives a reload, and a groom saved without a signal is kept and sent later.
// What the device keeps are ids, codes, times and numbers. Words that somebody typed are never kept here.
const form = document.querySelector("form.log");
const line = document.querySelector("#waiting");
const me = line.dataset.by;
const twoWeeks = 14 * 24 * 60 * 60 * 1000;
const skew = Date.parse(line.dataset.now) - Date.now();
const now = () => new Date(Date.now() + skew);

/* ---------- what the device keeps ---------- */

const read = (key) => JSON.parse(localStorage.getItem(key) ?? "null");
const write = (key, value) => localStorage.setItem(key, JSON.stringify(value));
const draftOf = (groom) => `log-draft:${groom}`;
const queueOf = (groom) => `log-queue:${groom}`;
const keysOf = (kind) => Object.keys(localStorage).filter((key) => key.startsWith(`log-${kind}:`));
const mine = () => keysOf("queue").map(read).filter((item) => item.by === me);

function forget(groom) {
  localStorage.removeItem(draftOf(groom));
  localStorage.removeItem(queueOf(groom));
}

function prune() {
  for (const key of keysOf("draft")) {
    if (Date.now() - read(key).at > twoWeeks) localStorage.removeItem(key);
  }
}

/* ---------- the line that says what waits ---------- */

const link = (href, words) => Object.assign(document.createElement("a"), { href, textContent: words });

function tell(...sentences) {
  const items = mine();
  const waits = items.filter((item) => !item.refused);
  if (waits.length === 1) sentences.push("1 groom waits on this device. It is sent when there is a signal.");
  if (waits.length > 1) sentences.push(`${waits.length} grooms wait on this device. They are sent when there is a signal.`);
  if (waits.some((item) => item.words)) sentences.push("Words are not kept on the device: leave this page open, or write them again later.");
  for (const item of items.filter((one) => one.refused)) {
    sentences.push("A groom that waited could not be kept as it is:", link(item.url, "look at it"));
  }
  line.replaceChildren(...sentences.flatMap((sentence) => [sentence, " "]));
  line.hidden = sentences.length === 0;
}

/* ---------- sending what waits ---------- */

async function isReachable() {
  if (!navigator.onLine) return false;
  try {
    return (await fetch(line.dataset.probe, { cache: "no-store", signal: AbortSignal.timeout(5000) })).ok;
  } catch (reason) {
    console.info("No signal:", reason.message);
    return false;
  }
}

async function send(item) {
  const token = document.querySelector('input[name="__RequestVerificationToken"]');
  const body = new URLSearchParams([...item.fields, [token.name, token.value]]);
  const answer = await fetch(item.url, { method: "POST", body });
  const place = new URL(answer.url).pathname;
  if (answer.redirected && place.startsWith(line.dataset.grooms)) {
    forget(item.groom);
    if (form?.dataset.groom === item.groom) location.assign(answer.url);
    return ["Sent:", link(answer.url, "the groom that waited."), ...(item.words ? ["Its words were not kept:", link(item.url, "write them again.")] : [])];
  }
  // Somebody must sign in first; the same person's next page tries again.
  if (answer.redirected) return [];
  write(queueOf(item.groom), { ...item, refused: answer.status });
  return [];
}

let isFlushing = false;
let keptHere = null;

async function flush() {
  const items = mine().filter((item) => !item.refused);
  if (isFlushing || items.length === 0 || !(await isReachable())) return;
  isFlushing = true;
  const said = [];
  try {
    for (const item of items) {
      if (item.groom === keptHere) return submitNow(null, item);
      said.push(...(await send(item)));
    }
  } catch (reason) {
    console.info("The signal is gone again:", reason.message);
  } finally {
    isFlushing = false;
  }
  tell(...said);
}

/* ---------- the form ---------- */

const controls = () => [...form.elements].filter((control) => control.name !== "");
const isWords = (control) => control.tagName === "TEXTAREA" || control.name === "Why" || control.name === "__RequestVerificationToken";
const words = () => controls().filter((control) => control.tagName === "TEXTAREA" && control.value.trim() !== "");

function codes() {
  const typed = new Set(controls().filter(isWords).map((control) => control.name));
  return [...new FormData(form)].filter(([name]) => !typed.has(name));
}

function saveDraft() {
  const version = form.elements["Form.Version"].value;
  write(draftOf(form.dataset.groom), { by: me, at: Date.now(), version, fields: codes() });
}

function submitNow(submitter, item) {
  if (item) form.elements["Form.SavedAt"].value = item.savedAt;
  form.dataset.sure = "true";
  form.requestSubmit(submitter);
}

function keep() {
  const savedAt = now().toISOString();
  const fields = [...codes().filter(([name]) => name !== "Form.SavedAt"), ["Form.SavedAt", savedAt]];
  const { groom } = form.dataset;
  write(queueOf(groom), { groom, by: me, url: form.action, savedAt, words: words().length > 0, fields });
  saveDraft();
  keptHere = groom;
  tell();
  line.scrollIntoView({ block: "nearest" });
}

async function onSubmit(event) {
  const { submitter } = event;
  if (submitter?.hasAttribute("formaction") || form.dataset.sure) return;
  event.preventDefault();
  if (form.dataset.busy) return;
  form.dataset.busy = "true";
  const isThere = await isReachable();
  delete form.dataset.busy;
  if (isThere) submitNow(submitter);
  else keep();
}

/* ---------- stamps: one tap writes the time ---------- */

function offer(row) {
  const set = [...row.querySelectorAll('[name="Form.StampedWhat"]')].at(-1)?.value;
  const isOn = set === "MuzzleOn" || set === "MuzzleBreak";
  for (const tap of row.querySelectorAll("[name=stamp]")) {
    tap.hidden = row.dataset.muzzle ? isOn === (tap.value === "MuzzleOn") : set !== undefined;
  }
}

function addStamp(check, at) {
  const tap = form.querySelector(`[name=stamp][value="${CSS.escape(check)}"]`);
  if (!tap) return null;
  const row = tap.closest(".stamp");
  const set = document.querySelector("#stamp-set").content.cloneNode(true).firstElementChild;
  const [what, when] = set.querySelectorAll("input");
  what.value = check;
  when.value = at;
  when.setAttribute("aria-label", `${tap.dataset.said}, time`);
  if (row.dataset.muzzle) set.querySelector(".quiet").textContent = tap.dataset.said;
  row.querySelector(".taps").insertBefore(set, row.querySelector("[name=stamp]"));
  offer(row);
  return set;
}

function onClick(event) {
  const button = event.target.closest("button");
  if (button?.name === "stamp") {
    event.preventDefault();
    const clock = new Intl.DateTimeFormat("en-GB", { hour: "2-digit", minute: "2-digit", hourCycle: "h23", timeZone: form.dataset.zone });
    addStamp(button.value, clock.format(now()))?.querySelector(".undo").focus({ preventScroll: true });
  } else if (button?.classList.contains("undo")) {
    event.preventDefault();
    const row = button.closest(".stamp");
    button.closest(".set").remove();
    offer(row);
    row.querySelector("[name=stamp]:not([hidden])").focus({ preventScroll: true });
  } else return;
  react();
  saveDraft();
}

/* ---------- what opens what ---------- */

function react() {
  const isChosen = (control) => control.checked || control.name === "Form.StampedWhat";
  const code = (control) => (control.value === "true" ? control.name.split(".").at(-1) : control.value);
  const chosen = new Set(controls().filter(isChosen).map(code));
  for (const part of form.querySelectorAll("[data-when]")) {
    const isMet = part.dataset.when.split(" ").some((value) => chosen.has(value));
    if (part.tagName === "DETAILS" && isMet && part.classList.contains("unmet")) part.open = true;
    part.classList.toggle("met", isMet);
    part.classList.toggle("unmet", !isMet);
  }
}

/* ---------- a draft comes back ---------- */

function restore({ fields }) {
  const values = Map.groupBy(fields, ([name]) => name);
  const of = (name) => (values.get(name) ?? []).map(([, value]) => value);
  for (const set of form.querySelectorAll(".set")) set.remove();
  for (const [at, check] of of("Form.StampedWhat").entries()) addStamp(check, of("Form.StampedAt")[at]);
  for (const row of form.querySelectorAll(".stamp")) offer(row);
  for (const control of controls()) {
    if (control.type === "radio" || control.type === "checkbox") control.checked = of(control.name).includes(control.value);
    else if (control.type !== "hidden" && !isWords(control) && control.name !== "Form.StampedAt" && control.tagName !== "BUTTON") {
      control.value = of(control.name)[0] ?? "";
    }
  }
  for (const part of form.querySelectorAll("details")) part.open ||= part.querySelector("input:checked:not([value=''])") !== null;
  react();
}

function takeUp() {
  const draft = read(draftOf(form.dataset.groom));
  const isOurs = draft?.by === me && draft.version === form.elements["Form.Version"].value;
  const before = JSON.stringify(codes().filter(([name]) => !form.querySelector(`[type=hidden][name="${CSS.escape(name)}"]`)));
  if (form.dataset.fresh && isOurs) restore(draft);
  if (read(queueOf(form.dataset.groom))?.refused) localStorage.removeItem(queueOf(form.dataset.groom));
  const after = JSON.stringify(codes().filter(([name]) => !form.querySelector(`[type=hidden][name="${CSS.escape(name)}"]`)));
  return before === after ? [] : ["What you tapped before is filled in again."];
}

/* ---------- all together ---------- */

prune();
const kept = document.querySelector("[data-kept]")?.dataset.kept;
if (kept) forget(kept);
const opening = form ? takeUp() : [];
if (form) {
  react();
  form.addEventListener("click", onClick);
  form.addEventListener("input", () => (react(), saveDraft()));
  form.addEventListener("submit", onSubmit);
  addEventListener("pageshow", () => delete form.dataset.sure);
}
tell(...opening);
flush();
addEventListener("online", flush);
document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && flush());
setInterval(flush, 20000);
