/**
 * The search box, on every page: a code first, however it is typed, then pages by their words. It follows the combobox
 * pattern of the ARIA Authoring Practices: the box keeps the focus, arrows move through the list, Enter opens, Escape
 * closes; the slash key goes to the box. A pasted reader report opens the report view. Nothing is loaded before first use.
 */
(function () {
  "use strict";

  /**
   * @typedef {{ href: string, label: (string | Node)[], note: string }} Choice
   * @typedef {import('./look.js').Looked} Looked
   */

  const MOST_PAGES = 6;
  const form = /** @type {HTMLFormElement} */ (document.getElementById("_find"));
  const box = /** @type {HTMLInputElement} */ (document.getElementById("_find-box"));
  const list = /** @type {HTMLElement} */ (document.getElementById("_find-list"));
  const status = /** @type {HTMLElement} */ (document.getElementById("_find-status"));
  /** @type {Promise<unknown> | null} */
  let tools = null;
  let chosen = -1;
  let asked = 0;

  const words = () => GuideGen.data.site.words;
  /** @param {string} wording @param {...(string | number)} values */
  const fill = (wording, ...values) => wording.replace(/\{(\d)\}/g, (_, i) => String(values[i]));

  /** Brings what the box needs, once. A failure is told and tried again with the next key. */
  function ready() {
    tools ??= Promise.all([GuideGen.loadCodes(), GuideGen.loadSearch()]).catch(fault => { tools = null; throw fault; });
    return tools;
  }

  /** @param {Looked} found @param {string | null} meaning @returns {Choice} */
  function codeChoice(found, meaning) {
    const code = document.createElement("code");
    code.textContent = found.code;
    const certainty = words().certainty[found.certainty];
    const cover = found.own ? "" : GuideGen.look.isMakers(found.code) ? words().makersOwn : words().standardOnly;
    return {
      href: GuideGen.look.hrefOf(found.code) ?? "codes.html",
      label: [code, " " + (meaning ?? words().noMeaning)],
      note: [certainty && fill(certainty, found.code), cover].filter(Boolean).join(" "),
    };
  }

  /** @param {string} text @param {string[]} terms @returns {(string | Node)[]} the text with the matched words marked */
  const marked = (text, terms) => GuideGen.searchWords.pieces(text, terms).map((/** @type {string} */ piece, /** @type {number} */ i) => {
    if (i % 2 === 0) return piece;
    const mark = document.createElement("mark");
    mark.textContent = piece;
    return mark;
  });

  /** @param {{ address: string, name: string, kind: string, codes: string[], excerpt: string, terms: string[] }} found @returns {Choice & { excerpt: (string | Node)[] }} */
  const pageChoice = found => ({
    href: found.address,
    label: marked(found.name, found.terms),
    note: words().kinds[found.kind],
    excerpt: marked(found.excerpt, found.terms),
  });

  /** @param {Choice & { excerpt?: (string | Node)[] }} choice @param {number} i */
  function option(choice, i) {
    const item = document.createElement("li");
    item.id = "_find-" + i;
    item.setAttribute("role", "option");
    item.setAttribute("aria-selected", "false");
    item.dataset.href = choice.href;
    const name = document.createElement("span");
    name.className = "find-name";
    name.append(...choice.label);
    const note = document.createElement("span");
    note.className = "find-note";
    note.textContent = choice.note;
    item.append(name, " ", note);
    if (choice.excerpt) {
      const excerpt = document.createElement("span");
      excerpt.className = "find-excerpt";
      excerpt.append(...choice.excerpt);
      item.append(excerpt);
    }
    return item;
  }

  /** @param {Choice[]} choices */
  function show(choices) {
    choose(-1);
    list.replaceChildren(...choices.map(option));
    list.hidden = choices.length === 0;
    box.setAttribute("aria-expanded", String(choices.length > 0));
  }

  /** @param {number} i */
  function choose(i) {
    list.children[chosen]?.setAttribute("aria-selected", "false");
    chosen = i;
    const item = list.children[chosen];
    if (!item) return box.removeAttribute("aria-activedescendant");
    item.setAttribute("aria-selected", "true");
    item.scrollIntoView({ block: "nearest" });
    box.setAttribute("aria-activedescendant", item.id);
  }

  /** Nothing matched: what to try, with the nearest words of the guide. @param {string} text */
  async function tellNothing(text) {
    const typed = text.split(/[^\p{L}\p{N}]+/u).filter(word => word.length > 2).slice(0, 4);
    const near = (await Promise.all(typed.map(word => GuideGen.searchWords.nearest(word, 2)))).flat();
    return fill(words().nothing, text.trim()) + " " + (near.length > 0 ? fill(words().nearest, near.join(", ")) : words().tryNext);
  }

  /** Shows what the text in the box finds. @returns {Promise<Choice[]>} */
  async function search() {
    const text = box.value, turn = ++asked;
    if (text.trim() === "") {
      status.textContent = "";
      show([]);
      return [];
    }
    await ready();
    const codes = GuideGen.look.find(text);
    const meanings = await Promise.all(codes.map((/** @type {Looked} */ c) => GuideGen.look.meaningOf(c.code)));
    const codeChoices = codes.map((/** @type {Looked} */ c, /** @type {number} */ i) => codeChoice(c, meanings[i]));
    const found = await GuideGen.searchWords.pages(text, MOST_PAGES);
    const pages = found.filter((/** @type {{ address: string }} */ page) => codeChoices.every(c => c.href !== page.address));
    const choices = [...codeChoices, ...pages.map(pageChoice)];
    const message = choices.length > 0 ? fill(words().found, choices.length) : await tellNothing(text);
    // A later key may have asked for something else meanwhile.
    if (turn === asked) {
      show(choices);
      status.textContent = message;
    }
    return choices;
  }

  const run = () => { search().catch(() => { status.textContent = form.dataset.failed || ""; }); };

  /** @param {string} href relative to the site's root */
  const open = href => { location.href = GuideGen.base + href; };

  /** A pasted report has several lines or several codes. @param {ClipboardEvent} event */
  function paste(event) {
    const text = event.clipboardData?.getData("text") ?? "";
    if (!text.trim().includes("\n") && text.length < 60) return;
    event.preventDefault();
    open("report.html#text=" + encodeURIComponent(text.slice(0, 20000)));
  }

  /** @param {KeyboardEvent} event */
  function key(event) {
    const count = list.children.length;
    const moves = /** @type {Record<string, number>} */ ({ ArrowDown: (chosen + 1) % count, ArrowUp: (chosen <= 0 ? count : chosen) - 1 });
    if (event.key in moves && count > 0) {
      event.preventDefault();
      choose(moves[event.key]);
    } else if (event.key === "Escape") {
      if (list.hidden) box.value = "";
      show([]);
      status.textContent = "";
    }
  }

  box.addEventListener("focus", () => { ready().catch(() => {}); }, { once: true });
  box.addEventListener("input", run);
  box.addEventListener("paste", paste);
  box.addEventListener("keydown", key);
  list.addEventListener("mousedown", event => event.preventDefault());
  list.addEventListener("click", event => {
    const item = /** @type {HTMLElement} */ (event.target).closest("li");
    if (item?.dataset.href) open(item.dataset.href);
  });
  form.addEventListener("submit", event => {
    event.preventDefault();
    const item = /** @type {HTMLElement | undefined} */ (list.children[chosen]);
    if (item?.dataset.href) return open(item.dataset.href);
    search().then(choices => { if (choices.length > 0) open(choices[0].href); }).catch(() => { status.textContent = form.dataset.failed || ""; });
  });
  document.addEventListener("keydown", event => {
    const isTyping = /^(INPUT|TEXTAREA|SELECT)$/.test(/** @type {HTMLElement} */ (event.target).tagName);
    if (event.key !== "/" || isTyping || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    box.focus();
  });
  form.hidden = false;
}());
