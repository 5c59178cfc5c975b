// The page put together: what is typed goes to the program behind it, what it answers is shown.

import { get, Gone, Newest, post } from "./api.js";
import { byId, el } from "./dom.js";
import { files } from "./files.js";
import { Form } from "./form.js";
import { Print } from "./print.js";
import { See } from "./see.js";
import { Store } from "./store.js";
import { windows } from "./windows.js";

const AGAIN = 2000; // ms until a program that cannot be reached is asked again

function trouble(words) {
  const place = byId("trouble");
  place.textContent = words;
  place.hidden = !words;
}

async function begin() {
  const [about, guides] = await Promise.all([get("/api/fields"), get("/api/guides")]);
  const store = new Store(about);
  store.recall();
  document.body.append(el("datalist", { id: "papers" }, ...about.papers.map((name) => el("option", { value: name }))));
  byId("version").textContent = `templategen ${about.version}. Everything stays on this machine.`;

  let away = false;
  /** Whether the program cannot be reached; it is then asked again, and nothing typed is lost. */
  function gone(refused) {
    if (!(refused instanceof Gone)) return false;
    if (!away) trouble("The program behind this page has stopped. What you typed is kept in this browser; start it again: templategen serve");
    away = true;
    setTimeout(ask, AGAIN);
    return true;
  }

  const print = new Print(store, gone);
  const form = new Form(store, guides, { "": byId("groups"), paper: print.paper });
  const see = new See(store, form);
  windows(store);
  files(store, { trouble, gone });

  const plans = new Newest((question) => post("/api/plan", question), ({ answer, refused, newer }) => {
    if (refused && gone(refused)) return;
    if (away) trouble("");
    away = false;
    if (refused && refused.status === 429) {
      if (!newer) setTimeout(ask, AGAIN);
      return;
    }
    if (refused && newer) return; // what was wrong with it may be right by now: the next answer says
    form.answer(answer?.understood || refused?.understood || {}, refused?.faults || []);
    see.answer(answer, refused);
    print.plan(answer, refused?.faults?.some((fault) => fault.read));
  });
  function ask() {
    plans.change({ ...store.question(), window: store.window ?? 0 });
  }
  for (const event of ["changed", "shown"]) store.addEventListener(event, ask);
  ask();
  document.documentElement.dataset.ready = "yes";
}

begin().catch((error) => {
  trouble("The program behind this page does not answer. Start it again: templategen serve");
  console.error(error);
});
