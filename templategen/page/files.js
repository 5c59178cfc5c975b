// New, open, save; and the question before unsaved work is left.

import { post } from "./api.js";
import { ask } from "./ask.js";
import { download } from "./download.js";
import { byId, say } from "./dom.js";

export function files(store, { trouble, gone }) {
  const chooser = byId("file");

  /** Whether what is typed may go: saved before, or not wanted. */
  async function mayGo() {
    if (!store.dirty) return true;
    const way = await ask("Save this job first?", "Some of what you typed stands in no file yet.",
      [["save", "Save it first"], ["drop", "Throw it away"], ["stay", "Go on with this job"]]);
    return way === "drop" || (way === "save" && save());
  }

  byId("new").addEventListener("click", async () => {
    if (!(await mayGo())) return;
    store.begin(store.about.start[store.units], "", "");
    say("A new job.");
  });
  byId("open").addEventListener("click", async () => {
    if (!(await mayGo())) return;
    chooser.value = "";
    chooser.click();
  });
  chooser.addEventListener("change", () => { if (chooser.files[0]) open(chooser.files[0]); });
  byId("save").addEventListener("click", () => save());
  addEventListener("keydown", (event) => {
    if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "s") {
      event.preventDefault();
      save();
    }
  });
  addEventListener("beforeunload", (event) => { if (store.dirty) event.preventDefault(); });
  addEventListener("dragover", (event) => event.preventDefault());
  addEventListener("drop", async (event) => {
    event.preventDefault();
    const [file] = event.dataTransfer.files;
    if (file && (await mayGo())) open(file);
  });

  async function open(file) {
    trouble("");
    if (file.size > store.about.limits.bytes) {
      trouble(`${file.name}: ${file.size} bytes, and a spec has at most ${store.about.limits.bytes}. Is this the file?`);
      return;
    }
    let text;
    try {
      text = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(await file.arrayBuffer());
    } catch {
      trouble(`${file.name}: this is no text in UTF-8. Open the spec, a file that ends in .toml.`);
      return;
    }
    try {
      const { form } = await post("/api/form", { spec: text });
      store.begin(form, text, file.name);
      say(`Opened ${file.name}.`);
    } catch (refused) {
      if (gone(refused)) return;
      trouble([`${file.name} was not opened.`, ...refused.faults.map((fault) => `${[fault.field, fault.read].filter(Boolean).join(": ")} – ${fault.right}`)].join(" "));
    }
  }

  async function save() {
    trouble("");
    const question = store.question();
    try {
      const { spec } = await post("/api/spec", question);
      const name = store.name || "spec.toml";
      download(new Blob([spec], { type: "application/toml" }), name);
      store.keep(spec, name);
      say(`Saved as ${name}.`);
      return true;
    } catch (refused) {
      if (!gone(refused)) trouble(refused.message);
      return false;
    }
  }

  const show = () => {
    byId("saved").textContent = store.dirty ? "not saved" : store.name;
  };
  store.addEventListener("changed", show);
  store.addEventListener("unkept", () => trouble("This browser keeps nothing of what is typed here. Save before you leave."));
  show();
}
