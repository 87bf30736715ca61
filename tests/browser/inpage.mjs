// What runs inside the page: finding things as a person or a screen reader names them. The roles and accessible names are worked
// out by the Testing Library; each function here is sent to the page as text, so it may use nothing from outside itself.

/** All records of the database: texts by their keys. */
export function records() {
  return new Promise((done, fail) => {
    const asked = indexedDB.open("haulm");
    asked.onerror = () => fail(asked.error);
    asked.onsuccess = () => {
      const database = asked.result;
      if (!database.objectStoreNames.contains("records")) {
        database.close();
        return done({});
      }
      const store = database.transaction("records").objectStore("records");
      const [keys, texts] = [store.getAllKeys(), store.getAll()];
      texts.onsuccess = () => {
        database.close();
        done(Object.fromEntries(keys.result.map((key, at) => [key, texts.result[at]])));
      };
    };
  });
}

/** Puts records into the database: `[key, text]` each. */
export function putRecords(entries) {
  return new Promise((done, fail) => {
    const asked = indexedDB.open("haulm");
    asked.onerror = () => fail(asked.error);
    asked.onsuccess = () => {
      const step = asked.result.transaction("records", "readwrite");
      for (const [key, text] of entries) step.objectStore("records").put(text, key);
      step.onabort = () => fail(step.error);
      step.oncomplete = () => {
        asked.result.close();
        done();
      };
    };
  });
}

/** Whether the database has the open recipe with this text as an entry. */
export function drafted(text) {
  return new Promise((done, fail) => {
    const asked = indexedDB.open("haulm");
    asked.onerror = () => fail(asked.error);
    asked.onsuccess = () => {
      const found = asked.result.transaction("drafts").objectStore("drafts").get("haulm/draft");
      found.onsuccess = () => {
        asked.result.close();
        done(String(found.result).includes(`"${text}"`));
      };
    };
  });
}

/** Clears all that the browser keeps of the app. */
export function forget() {
  localStorage.clear();
  return new Promise((done, fail) => {
    const asked = indexedDB.open("haulm");
    asked.onerror = () => fail(asked.error);
    asked.onsuccess = () => {
      const names = [...asked.result.objectStoreNames];
      const step = asked.result.transaction(names, "readwrite");
      for (const name of names) step.objectStore(name).clear();
      step.oncomplete = () => {
        asked.result.close();
        done();
      };
    };
  });
}

/** All elements in `root` of one of `roles`, each with its accessible name: `{ elements, names }`. */
export function named(root, roles) {
  const elements = [];
  const names = [];
  for (const role of roles) {
    window.TestingLibraryDom.queryAllByRole(root ?? document.body, role, {
      // Names are collected before the hidden ones would be left out, which takes most of the time.
      hidden: true,
      name: (name, element) => {
        if (!elements.includes(element)) {
          elements.push(element);
          names.push(name.replace(/\s+/g, " ").trim());
        }
        return true;
      },
    });
  }
  return { elements, names };
}

/** The innermost visible elements in `root` whose text holds `wanted`. */
export function holding(root, wanted) {
  const plain = (element) => element.textContent.replace(/\s+/g, " ");
  const all = [...(root ?? document.body).querySelectorAll("*")].filter((element) => plain(element).includes(wanted));
  return all.filter((element) => element.checkVisibility() && ![...element.children].some((child) => all.includes(child)));
}

/** Runs axe for the given tags, or of them only the rules that colours decide; gives what it found against the page. */
export function judge(tags, onlyColours, done) {
  const ids = (tags) => window.axe.getRules(tags).map(({ ruleId }) => ruleId);
  const colours = () => ids(["cat.color"]).filter((id) => ids(tags).includes(id));
  window.axe
    .run(document, { runOnly: onlyColours ? { type: "rule", values: colours() } : { type: "tag", values: tags }, resultTypes: ["violations"] })
    .then((result) => done(result.violations))
    .catch((cause) => done([{ id: "axe itself failed", help: String(cause), nodes: [] }]));
}

/** Notes, for each key pressed in `field`, how long it took until the changed `figure` had been through a frame. */
export function watchKeys(field, figure) {
  const text = () => document.querySelector(figure)?.textContent;
  const seen = { keys: [], presented: [] };
  let before = text();
  let pressed = 0;
  document.querySelector(field).addEventListener("keydown", (event) => (pressed = event.timeStamp), true);
  new MutationObserver(() => {
    if (!pressed || text() === before) return;
    before = text();
    const began = pressed;
    pressed = 0;
    const changed = performance.now() - began;
    requestAnimationFrame(() => {
      // A message sent from the frame's own callback arrives after that frame was laid out and painted.
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => seen.keys.push({ changed, painted: performance.now() - began });
      port2.postMessage(0);
    });
  }).observe(document.body, { subtree: true, childList: true, characterData: true });
  // The browser's own account, up to the frame's presentation and rounded to 8 ms; it lists only what took 16 ms or more.
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) if (entry.name === "keydown") seen.presented.push(entry.duration);
  }).observe({ type: "event", durationThreshold: 16 });
  window.haulmKeys = seen;
}
