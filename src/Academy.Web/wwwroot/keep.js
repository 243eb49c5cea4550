// Keeps one page on the device: the heat card, with the files that it shows. Nothing that belongs to a person is ever kept here.
const shelf = "heat-card";
const card = new URL("heat", self.registration.scope).href;

const filesOf = (html) =>
  [...html.matchAll(/<(?:link|script|img)[^>]+(?:href|src)="([^"]+)"/g)].map(([, file]) => new URL(file, card).href);

async function keep() {
  const answer = await fetch(card, { credentials: "omit", cache: "no-cache" });
  if (!answer.ok) return answer;
  const kept = await caches.open(shelf);
  const files = filesOf(await answer.clone().text());
  await kept.addAll(files);
  await kept.put(card, answer.clone());
  for (const old of await kept.keys()) {
    if (old.url !== card && !files.includes(old.url)) await kept.delete(old);
  }
  return answer;
}

// The kept card comes at once, also on a bad line; a newer one is fetched behind it.
async function show(event) {
  const kept = await caches.match(card);
  const newer = keep();
  if (!kept) return newer;
  event.waitUntil(newer.catch((reason) => console.info("The heat card is shown as it was kept.", reason.message)));
  return kept;
}

self.addEventListener("install", (event) => event.waitUntil(keep().then(() => self.skipWaiting())));
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));
self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET") return;
  if (request.mode === "navigate" && request.url.split(/[?#]/)[0] === card) {
    event.respondWith(show(event));
  } else if (/\.(css|svg|js)$|\/own\//.test(new URL(request.url).pathname)) {
    event.respondWith(fetch(request).catch(async () => (await caches.match(request)) ?? Response.error()));
  }
});
