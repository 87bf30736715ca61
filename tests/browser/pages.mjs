// Boxes of every page that keeps what is typed, by their ids, and how they are typed into without a driver's delays.

/** Each page with three of its boxes and what is typed there; `section` is the part of the page that has them. */
export const PAGES = [
  { name: "Line", hash: "#line", section: 4, boxes: null },
  { name: "Bench", hash: "#bench", boxes: ["bench-name", "field-bench_mat_length", "field-bench_mat_width"] },
  { name: "Compare", hash: "#compare", section: 5, boxes: ["field-seed", "field-plus-minus-thickness", "field-plus-minus-fibre_moisture"] },
  { name: "Mixing", hash: "#mixing", boxes: ["field-concentration", "field-coldest", "field-solution"] },
  { name: "Binder systems", hash: "#systems", boxes: ["system-name", "system-note", "system-note"] },
  // Last: what is typed there makes no sense, and the other pages follow it.
  { name: "Recipe", hash: "#recipe", boxes: ["recipe-name", "field-board_density", "field-fibre_moisture"] },
];

/** Goes to a page and the part of it that has the boxes; gives the boxes' ids. */
export async function enter(page, { hash, section, boxes }) {
  await page.go(hash);
  return show(page, { section, boxes });
}

export async function show(page, { section, boxes }) {
  if (section) {
    await page.until(() => page.run((at) => {
      const tab = document.querySelectorAll("#content .sections button, #content .sections a")[at - 1];
      tab?.click();
      return tab !== undefined;
    }, section));
  }
  return page.until(async () => {
    const there = await page.run(() => [...document.querySelectorAll("#content input[type=text], #content textarea")].filter((box) => box.checkVisibility()).map((box) => box.id));
    const wanted = boxes ?? there.filter((id) => id).slice(0, 3);
    if (wanted.length < 3 || !wanted.every((id) => there.includes(id))) throw new Error(`${wanted} are not all among ${there}`);
    return wanted;
  });
}

/** In the page: puts a text into a box as typing does. */
export function put(id, text) {
  const box = document.getElementById(id);
  box.value = text;
  box.dispatchEvent(new Event("input", { bubbles: true }));
}

/** In the page: what a box holds. */
export const holds = (id) => document.getElementById(id)?.value;

/** Presses what is behind the ⋯ of a recipe or a binder system in the library: "Rename", "Delete", "History". */
export async function act(page, action, name) {
  await unfoldRow(page, name);
  await page.press(`${action} ${name}`);
}

/** Opens what is behind the ⋯ of a row in the library. */
export async function unfoldRow(page, name) {
  await page.until(async () => {
    const more = await page.button(`More for ${name}`);
    if ((await page.run((e) => e.getAttribute("aria-expanded"), more)) === "false") await more.click();
    if ((await page.run((e) => e.getAttribute("aria-expanded"), more)) === "false") throw new Error(`${name} does not open`);
  });
}
