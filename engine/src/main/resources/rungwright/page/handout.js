// The answering part of a handout: asks, decides with the stepper, and remembers in this browser alone.
(() => {
  "use strict";
  const data = JSON.parse(document.getElementById("program").textContent);
  const words = JSON.parse(document.getElementById("words").textContent);
  const program = data.decides;
  const KEY = "handout " + program.fingerprint;
  const { get, put } = Stepper;
  const home = document.getElementById("answer");

  // ---- remembering -----------------------------------------------------------------------------------------
  let storage = null;
  try { storage = window.localStorage; storage.getItem(KEY); } catch (e) { storage = null; }
  let events = [];
  const readEvents = (text) => text.split("\n").filter((line) => line.trim() !== "").map((line) => JSON.parse(line));
  const writeEvents = () => events.map((event) => JSON.stringify(event)).join("\n") + (events.length ? "\n" : "");
  const keep = () => { if (storage) { try { storage.setItem(KEY, writeEvents()); } catch (e) { say(words.notKept); } } };
  const isDate = (text) => /^[0-9]{4}-[0-9]{2}-[0-9]{2}$/.test(text) && !Number.isNaN(Date.parse(text + "T00:00:00Z"));
  /** Whether something read from a file has the parts of an event, so that the stepper can judge it. */
  const isEvent = (event) => {
    const isObject = (it) => typeof it === "object" && it !== null && !Array.isArray(it);
    const texts = (it) => it === undefined || (isObject(it) && Object.values(it).every((value) => typeof value === "string"));
    const lists = (it) => it === undefined || (isObject(it) && Object.values(it).every((items) => Array.isArray(items) && items.every((item) => typeof item === "string")));
    const said = (it) => it === undefined || typeof it === "string";
    return isObject(event) && event.form === 1 && typeof event.event === "string" && isDate(event.date) && said(event.id)
      && lists(event.facts) && texts(event.assessment) && texts(event.readings)
      && (event.sets === undefined || (Array.isArray(event.sets) && event.sets.every((set) => set !== undefined && texts(set))))
      && (event.event !== "move" || (typeof event.to === "string" && typeof event.why === "string"))
      && (event.event !== "clearance" || typeof event.by === "string");
  };
  /** The state after all events, and the last decision. */
  const fold = (all) => all.reduce(({ state }, event) => {
    const last = Stepper.step(program, state, event);
    return { state: last.after, last };
  }, { state: null, last: null });

  // ---- building the page -----------------------------------------------------------------------------------
  const node = (tag, attributes = {}, ...children) => {
    const made = document.createElement(tag);
    Object.entries(attributes).forEach(([name, value]) => {
      if (name === "on") { made.addEventListener(value[0], value[1]); } else { made.setAttribute(name, value); }
    });
    children.flat(Infinity).forEach((child) => made.append(child));
    return made;
  };
  const list = (items) => node("ul", {}, items.map((item) => node("li", {}, item)));
  const fill = (text, ...values) => text.replace(/\{([0-9])\}/g, (gap, index) => values[index]);
  const place = (at) => at["stage name"] + (at["rung name"] ? ", " + fill(words.rung, local(at["rung name"])) : "");
  const today = () => {
    const now = new Date();
    const two = (n) => String(n).padStart(2, "0");
    return now.getFullYear() + "-" + two(now.getMonth() + 1) + "-" + two(now.getDate());
  };
  /** An amount as its reader writes it, and as the program reads it; what is no amount stays as it is. */
  const local = (text) => {
    const about = text.startsWith("about ");
    const number = about ? text.slice(6) : text;
    if (!Stepper.isAmount(number)) { return text; }
    const shown = words.decimal === "," ? number.replace(".", ",") : number;
    return about ? fill(words.about, shown) : shown;
  };
  const plain = (text) => (words.decimal === "," ? text.replace(/^(\s*-?[0-9]+),([0-9])/, "$1.$2") : text);
  const shownDate = (date) => new Date(date + "T00:00:00Z").toLocaleDateString(document.documentElement.lang === "en" ? "en-GB" : document.documentElement.lang,
    { timeZone: "UTC", day: "numeric", month: "short", year: "numeric" });
  /** Yes and no are our words; all other values are the coach's. */
  const isAnswer = (values) => values.words && values.words.length === 2 && values.words[0] === "no" && values.words[1] === "yes";
  const said = (values, text) => (isAnswer(values) ? (text === "yes" ? words.yes : text === "no" ? words.no : text) : values.words ? text : local(text));
  const showValue = (values, position) => said(values, Stepper.showValue(values, position));
  /** From the least to the greatest in what steps, the unit said once; nothing of names, which the field shows. */
  const range = (values) => {
    if (values.words) { return ""; }
    const greatest = showValue(values, values.count - 1);
    if (values.count === 1) { return greatest; }
    const unit = values.unit ? " " + values.unit : "";
    const all = fill(words.range, showValue(values, 0).slice(0, -unit.length || undefined), greatest);
    const step = showValue({ ...values, least: values.step }, 0);
    return step === "1" + unit ? all : fill(words.rangeBy, all, step);
  };
  /** What a list can hold: how many items, and which. */
  const listed = (fact) => (fact.list[0] === 0 ? fill(words.several, fact.list[1], range(fact.values))
    : fill(words.severalFrom, fact.list[0], fact.list[1], range(fact.values)));
  /** What a quantity was in a session. */
  const shown = (seen, quantity) => {
    const text = Stepper.shown(program, seen, quantity);
    const of = quantity.m === undefined ? quantity.f === undefined ? null : program.facts[quantity.f] : program.measures[quantity.m];
    return of ? said(of.values, text) : local(text);
  };

  const live = node("div", { id: "said", role: "status", "aria-live": "polite", tabindex: "-1" });
  const say = (text) => { live.textContent = text; };

  let number = 0;
  /** One question with its field; `read` gives the answer as text. */
  const question = (label, values, hint) => {
    number += 1;
    const id = "q" + number;
    const help = hint ? node("span", { id: id + "h", class: "hint" }, hint) : [];
    const described = hint ? { "aria-describedby": id + "h" } : {};
    const field = values.words
      ? node("select", { id, ...described }, node("option", { value: "" }, words.choose),
        values.words.map((word) => node("option", { value: word }, said(values, word))))
      : node("input", { id, type: "text", inputmode: values.least === undefined ? "text" : "decimal", autocomplete: "off", ...described });
    return { row: node("p", { class: "question" }, node("label", { for: id }, label), field, help), read: () => (values.least === undefined ? field.value : plain(field.value)), field };
  };

  const dateQuestion = () => {
    number += 1;
    const id = "q" + number;
    const field = node("input", { id, type: "date", value: today(), required: "" });
    return { row: node("p", { class: "question" }, node("label", { for: id }, words.date), field), read: () => field.value, field };
  };

  /** A form that shows what is wrong above its button and stays as it is then. */
  const form = (heading, rows, button, submit) => {
    const trouble = node("p", { class: "trouble", role: "alert" });
    const made = node("form", { class: "card", novalidate: "" }, node("h3", {}, heading), rows, trouble,
      node("p", {}, node("button", { type: "submit" }, button)));
    made.addEventListener("submit", (event) => {
      event.preventDefault();
      trouble.textContent = "";
      const wrong = submit();
      if (wrong) { trouble.textContent = wrong; }
    });
    return made;
  };

  const refusal = (decision) => fill(get(words.refusals, decision.refusal.code) || words.refused,
    ...decision.refusal.subjects.map((subject) => (isDate(subject) ? shownDate(subject) : subject)));

  /** Records an event if the program takes it; what is wrong otherwise. */
  const record = (event) => {
    if (!isDate(event.date)) { return words.noDate; }
    const decision = Stepper.step(program, fold(events).state, event);
    if (decision.kind === "refused") { return refusal(decision); }
    events.push(event);
    keep();
    show(decision);
    return "";
  };

  // ---- the forms -------------------------------------------------------------------------------------------
  const factQuestions = () => program.facts.map((fact) => ({ fact, ...question(fact.name, fact.list ? {} : fact.values,
    fact.list ? listed(fact) : range(fact.values)) }));
  const testQuestions = () => program.assessments.map((asked) => ({ asked, ...question(asked.ask || asked.name, asked.values, range(asked.values)) }));
  const trainee = (facts, tests, least) => {
    const given = { facts: {}, assessment: {} };
    facts.forEach(({ fact, read }) => {
      const items = fact.list ? read().split(words.decimal === "," ? /;|,\s/ : /[;,]/).map((item) => plain(item.trim())).filter((item) => item !== "") : [read().trim()];
      put(given.facts, fact.name, items);
    });
    tests.forEach(({ asked, read }) => {
      const text = read().trim();
      if (text !== "") { put(given.assessment, asked.name, text); } else if (least) {
        put(given.assessment, asked.name, Stepper.showValue(asked.values, 0));
      }
    });
    return given;
  };
  const startForms = () => {
    const date = dateQuestion();
    const facts = factQuestions();
    const tests = testQuestions();
    const parts = [form(words.newHere, [date.row, facts.map((each) => each.row), tests.map((each) => each.row)], words.placeMe,
      () => record({ form: 1, event: "enrol", date: date.read(), ...trainee(facts, tests, false) }))];
    parts.push(knownPlace());
    return parts;
  };

  const knownPlace = () => {
    const date = dateQuestion();
    const facts = factQuestions();
    const tests = testQuestions();
    const stage = question(words.whichStage, { words: program.stages.map((each) => each.name) }, words.whichStageHint);
    const rung = question(words.whichRung, {}, words.whichRungHint);
    return node("details", { class: "card" }, node("summary", {}, words.knowPlace),
      form(words.knowPlace, [date.row, facts.map((each) => each.row), tests.map((each) => each.row), stage.row, rung.row], words.startThere, () => {
        const enrol = { form: 1, event: "enrol", date: date.read(), ...trainee(facts, tests, true) };
        if (!isDate(enrol.date)) { return words.noDate; }
        const first = Stepper.step(program, null, enrol);
        if (first.kind === "refused") { return refusal(first); }
        const index = program.stages.findIndex((each) => each.name === stage.read());
        if (index < 0) { return words.chooseStage; }
        const own = Stepper.rungs(program, first.after, index).map((each) => each.name).filter((name) => name !== "");
        const typed = rung.read().trim();
        const meant = own.includes(typed) ? typed : plain(typed);
        const to = stage.read() + (meant ? " / " + meant : "");
        const move = { form: 1, event: "move", date: date.read(), to, why: words.ownChoice };
        const second = Stepper.step(program, first.after, move);
        if (second.kind === "refused") {
          return own.length ? fill(words.noRung, own.map(local).join(words.decimal === "," ? "; " : ", ")) : words.noRungs;
        }
        events = [enrol];
        return record(move);
      }));
  };

  const sessionForm = (state) => {
    const date = dateQuestion();
    const sets = question(words.howManySets, {}, words.howManySetsHint);
    sets.field.value = "3";
    const fields = node("div");
    const kept = new Map();
    let asked = [];
    /** A question is made once and keeps what was typed, however often the number of sets or the date changes. */
    const once = (measure, set) => {
      const key = set + " " + measure.name;
      if (!kept.has(key)) { kept.set(key, { measure, set, ...ask(measure) }); }
      return kept.get(key);
    };
    const draw = () => {
      const day = date.read() >= state.latest ? date.read() : state.latest;
      const at = Stepper.ahead(program, state, day).placed.at;
      const needed = program.stages[at.stage].needed.map((index) => program.measures[index]);
      const many = Math.min(30, Math.max(1, parseInt(sets.read(), 10) || 1));
      const inSets = needed.filter((measure) => measure.set);
      const rows = [];
      asked = [];
      sets.row.hidden = !inSets.length;
      for (let set = 0; inSets.length && set < many; set += 1) {
        const one = inSets.map((measure) => once(measure, set));
        rows.push(node("fieldset", {}, node("legend", {}, fill(words.set, set + 1)), one.map((each) => each.row)));
        asked.push(...one);
      }
      needed.filter((measure) => !measure.set).map((measure) => once(measure, null)).forEach((one) => {
        rows.push(one.row);
        asked.push(one);
      });
      fields.replaceChildren(...rows);
    };
    const ask = (measure) => question(measure.ask || measure.name, measure.values, [range(measure.values),
      measure.otherwise === null ? "" : fill(words.ifLeftOut, showValue(measure.values, measure.otherwise))].filter((each) => each).join("; "));
    date.field.addEventListener("input", draw);
    sets.field.addEventListener("input", draw);
    draw();
    return form(words.whatDidYouDo, [date.row, sets.row, fields], words.whatNow, () => {
      const event = { form: 1, event: "session", date: date.read(), readings: {}, sets: [] };
      asked.forEach(({ measure, set, read }) => {
        const text = read().trim();
        if (set !== null) { while (event.sets.length <= set) { event.sets.push({}); } }
        if (text !== "") { put(set === null ? event.readings : event.sets[set], measure.name, text); }
      });
      return record(event);
    });
  };

  const clearanceForm = () => {
    const date = dateQuestion();
    const by = question(words.clearedBy, {}, words.clearedByHint);
    return form(words.stoppedHeading, [node("p", { class: "stop" }, words.stopped), date.row, by.row], words.goOn,
      () => (by.read().trim() ? record({ form: 1, event: "clearance", date: date.read(), by: by.read().trim() }) : words.whoCleared));
  };

  const changeForm = (state) => {
    const date = dateQuestion();
    const facts = factQuestions();
    const tests = testQuestions();
    facts.forEach(({ fact, field }) => { field.value = state.facts[fact.name].map(local).join(words.decimal === "," ? "; " : ", "); });
    tests.forEach(({ asked, field }) => { field.value = local(get(state.assessment, asked.name) || ""); });
    if (!facts.length && !tests.length) { return []; }
    return node("details", { class: "card" }, node("summary", {}, words.changed),
      form(words.changed, [date.row, facts.map((each) => each.row), tests.map((each) => each.row)], words.saveChange,
        () => record({ form: 1, event: "facts", date: date.read(), ...trainee(facts, tests, false) })));
  };

  // ---- the answer ------------------------------------------------------------------------------------------
  const headline = (decision) => {
    const at = decision.after ? place(decision.after.at) : "";
    const progress = decision.progress && decision.progress.met < decision.progress.wanted
      ? " " + fill(words.counted, decision.progress.met, decision.progress.wanted) : "";
    return fill(words.kinds[decision.kind], at) + progress;
  };

  /** What the rule that spoke asked, and what was logged. */
  const why = (decision) => {
    if (!decision.rule || !decision.seen) { return []; }
    const layers = [program.stop, program.every, ...program.stages.map((stage) => stage.rules)];
    const layer = layers.find((each) => each.rules.includes(decision.rule));
    const logged = layer.axes.map((axis) => fill(words.logged, axis.name, shown(decision.seen, axis.of)));
    const rule = get(data.says, decision.rule.label);
    return [node("h4", {}, words.why), node("p", {}, fill(words.because, rule || decision.rule.label)), list([...new Set(logged)])];
  };

  /** Each way on from where the session was judged, with what was met of it and what was not. */
  const movesOn = (decision) => {
    if (!decision.seen || !["hold", "fall back"].includes(decision.kind)) { return []; }
    const from = decision.break ? decision.break.to : decision.before.at;
    const layer = program.stages[from.stage].rules;
    const point = Stepper.positions(program, layer, decision.seen);
    const ways = layer.boxes.filter((box) => layer.rules[box.rule].kind === "advance").map((box) => list(box.asks.map(([axis, asked]) => {
      const [from2, to] = box.sides[axis];
      const met = from2 <= point[axis] && point[axis] < to;
      return fill(met ? words.met : words.unmet, layer.axes[axis].name, asked, shown(decision.seen, layer.axes[axis].of));
    })));
    return ways.length ? [node("h4", {}, words.movesOn), ways.flatMap((way, index) => (index ? [node("p", {}, words.or), way] : [way]))] : [];
  };

  const next = (state) => {
    if (state.status !== "training") { return []; }
    const stage = data.stages[state.at.stage];
    return [node("h4", {}, fill(words.nextTime, place(state.at))), list(stage.doing),
      data.cautions.length ? [node("h4", {}, words.cautions), list(data.cautions)] : []];
  };

  const answer = (decision) => {
    const parts = [node("h3", { id: "headline", tabindex: "-1" }, headline(decision))];
    if (decision.break) {
      const to = decision.break.to === "goal" ? words.goal : place(decision.break.to);
      parts.push(node("p", {}, fill(decision.break.away === 1 ? words.afterBreakDay : words.afterBreak, decision.break.away, place(decision.break.from), to)));
    }
    if (decision.rule && decision.rule.say && decision.kind !== "resume") { parts.push(node("p", { class: "say" }, decision.rule.say)); }
    parts.push(...why(decision), ...movesOn(decision));
    if (decision.after) { parts.push(...next(decision.after)); }
    return node("div", { class: "card answer" + (decision.kind === "stop" ? " stop" : "") }, parts.flat());
  };

  // ---- history ---------------------------------------------------------------------------------------------
  const history = () => {
    let state = null;
    const rows = events.map((event) => {
      const decision = Stepper.step(program, state, event);
      state = decision.after;
      return node("tr", {}, node("td", {}, shownDate(event.date)), node("td", {}, headline(decision)));
    });
    const file = node("input", { type: "file", id: "import", accept: ".jsonl,.txt,application/json" });
    file.addEventListener("change", () => file.files[0] && file.files[0].text().then(take));
    const buttons = [
      node("button", { type: "button", on: ["click", back] }, words.takeBack),
      node("button", { type: "button", on: ["click", save] }, words.save),
      node("button", { type: "button", on: ["click", forget] }, words.forget),
    ];
    return node("details", { class: "card" }, node("summary", {}, fill(words.history, events.length)),
      !events.length ? [] : node("table", {}, node("thead", {}, node("tr", {}, node("th", { scope: "col" }, words.date), node("th", { scope: "col" }, words.whatCame))),
        node("tbody", {}, rows)),
      node("p", { class: "buttons" }, events.length ? buttons : []),
      node("p", {}, node("label", { for: "import" }, words.load), " ", file),
      node("p", { class: "hint" }, storage ? words.kept : words.notKept));
  };
  const back = () => { events.pop(); keep(); show(fold(events).last); };
  const save = () => {
    const link = node("a", { href: URL.createObjectURL(new Blob([writeEvents()], { type: "application/jsonl" })), download: words.fileName });
    document.body.append(link);
    link.click();
    link.remove();
  };
  const forget = () => {
    if (window.confirm(words.forgetSure)) {
      events = [];
      if (storage) { storage.removeItem(KEY); }
      show(null);
      say(words.forgotten);
    }
  };
  const PARTS = ["form", "event", "date", "id", "facts", "assessment", "readings", "sets", "by", "to", "why"];
  /** The lines of a file by their numbers; a line that is none is named. */
  const readLines = (text) => text.split("\n").map((line, index) => ({ line: index + 1, text: line }))
    .filter(({ text: line }) => line.trim() !== "").map(({ line, text: json }) => {
      try { return { line, entry: JSON.parse(json) }; } catch (e) { throw new Error(fill(words.badLine, line, words.notOurs)); }
    });
  /** What a line of a coach's journal cannot tell this page, or nothing. */
  const foreign = (entry) => (!entry || typeof entry !== "object" ? words.notOurs
    : entry.event === "new version" ? words.carriedOver
      : entry.told && entry.told.program !== program.name ? fill(words.otherProgram, String(entry.told.program)) : "");
  /** Lines as events that count: those of a coach's journal with its corrections, in order of their days. */
  const eventsOf = (lines) => {
    const counting = [];
    lines.forEach(({ line, entry }) => {
      const wrong = foreign(entry);
      if (wrong) { throw new Error(fill(words.badLine, line, wrong)); }
      if (entry.event !== "correction") { counting.push({ line, number: entry.entry, event: entry }); return; }
      const corrected = counting.find(({ number }) => number === entry.corrects);
      if (!corrected || typeof entry.corrects !== "number") { throw new Error(fill(words.badLine, line, words.notOurs)); }
      corrected.line = line;
      corrected.event = entry.instead ? { form: 1, ...entry.instead } : null;
    });
    const events = counting.filter(({ event }) => event).map(({ line, event }) => ({ line,
      event: Object.fromEntries(PARTS.filter((part) => event[part] !== undefined).map((part) => [part, event[part]])) }));
    const isJournal = counting.some(({ number }) => number !== undefined);
    return isJournal ? events.sort((a, b) => (a.event.date < b.event.date ? -1 : a.event.date > b.event.date ? 1 : 0)) : events;
  };
  const take = (text) => {
    try {
      const taken = eventsOf(readLines(text));
      let state = null;
      taken.forEach(({ line, event }) => {
        if (!isEvent(event)) { throw new Error(fill(words.badLine, line, words.notOurs)); }
        const decision = Stepper.step(program, state, event);
        if (decision.kind === "refused") { throw new Error(fill(words.badLine, line, refusal(decision))); }
        state = decision.after;
      });
      events = taken.map(({ event }) => event);
      keep();
      show(fold(events).last);
      say(fill(words.taken, taken.length));
    } catch (trouble) {
      say(fill(words.notTaken, trouble.message));
    }
  };

  // ---- all of it -------------------------------------------------------------------------------------------
  let started = false;
  const show = (decision) => {
    const { state } = fold(events);
    const parts = decision ? [answer(decision)] : [];
    if (!state) { parts.push(...startForms()); } else if (state.status === "stopped") {
      parts.push(clearanceForm());
    } else if (state.status === "training") {
      parts.push(sessionForm(state), changeForm(state));
    }
    parts.push(history());
    home.replaceChildren(live, ...parts.flat(Infinity));
    const headlineNode = document.getElementById("headline");
    if (started) { (headlineNode || live).focus(); }
  };

  if (storage) {
    try {
      events = readEvents(storage.getItem(KEY) || "");
      if (!events.every(isEvent)) { events = []; }
    } catch (e) {
      events = [];
    }
  }
  window.Handout = { step: Stepper.step, program };
  show(fold(events).last);
  started = true;
})();
