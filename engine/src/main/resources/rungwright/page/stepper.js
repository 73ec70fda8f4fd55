// Decides events as the engine does, from the data of one proven program. Pure: no clock, no storage, no page.
// Numbers are exact: a ratio is [numerator, denominator] of BigInt, in lowest terms.
const Stepper = (() => {
  "use strict";

  // ---- exact numbers -------------------------------------------------------------------------------------
  const abs = (n) => (n < 0n ? -n : n);
  const gcd = (a, b) => { while (b) { [a, b] = [b, a % b]; } return a; };
  const ratio = (n, d = 1n) => {
    const shared = gcd(abs(n), abs(d)) * (d < 0n ? -1n : 1n);
    return [n / shared, d / shared];
  };
  const readRatio = (text) => {
    const [n, d] = text.split("/");
    return ratio(BigInt(n), BigInt(d || "1"));
  };
  const plus = (a, b) => ratio(a[0] * b[1] + b[0] * a[1], a[1] * b[1]);
  const negate = (a) => [-a[0], a[1]];
  const times = (a, b) => ratio(a[0] * b[0], a[1] * b[1]);
  const over = (a, b) => ratio(a[0] * b[1], a[1] * b[0]);
  const compare = (a, b) => {
    const difference = a[0] * b[1] - b[0] * a[1];
    return difference < 0n ? -1 : difference > 0n ? 1 : 0;
  };
  const whole = (n) => [BigInt(n), 1n];
  const ZERO = whole(0);

  /** A plain decimal where there is an exact one, else four places after "about", halves to even. */
  const showRatio = (r) => {
    let rest = r[1];
    let places = 0;
    let bottom = 1n;
    for (const prime of [2n, 5n]) {
      while (rest % prime === 0n) { rest /= prime; }
    }
    const exact = rest === 1n;
    if (exact) {
      while (bottom % r[1] !== 0n) { bottom *= 10n; places += 1; }
    } else {
      places = 4;
      bottom = 10000n;
    }
    const top = abs(r[0]) * bottom;
    let digits = top / r[1];
    const twice = (top % r[1]) * 2n;
    if (!exact && (twice > r[1] || (twice === r[1] && digits % 2n === 1n))) { digits += 1n; }
    const text = digits.toString().padStart(places + 1, "0");
    const fraction = text.slice(text.length - places).replace(/0+$/, "");
    const plain = text.slice(0, text.length - places) + (places && fraction ? "." + fraction : "");
    return (exact ? "" : "about ") + (r[0] < 0n && plain !== "0" ? "-" : "") + plain;
  };

  // ---- names as keys, whatever they are: a measure may be called __proto__ or constructor ----------------
  const get = (object, name) => (Object.hasOwn(object, name) ? object[name] : undefined);
  const put = (object, name, value) =>
    Object.defineProperty(object, name, { value, enumerable: true, configurable: true, writable: true });

  // ---- text ----------------------------------------------------------------------------------------------
  const BLANKS = "[\\t\\n\\u000b\\f\\r\\u001c-\\u001f \\u1680\\u2000-\\u2006\\u2008-\\u200a\\u2028\\u2029\\u205f\\u3000]";
  const ENDS = new RegExp("^" + BLANKS + "+|" + BLANKS + "+$", "g");
  const strip = (text) => text.replace(ENDS, "");
  const isBlank = (text) => strip(text) === "";
  const units = {
    s: ["time", "1"], min: ["time", "60"], kg: ["mass", "1"], g: ["mass", "1/1000"],
    lb: ["mass", "45359237/100000000"], m: ["length", "1"], cm: ["length", "1/100"], km: ["length", "1000"],
    "%": ["per cent", "1"], "": ["number", "1"],
  };
  const factor = (unit) => readRatio(units[unit][1]);
  const showAmount = (value, unit) => showRatio(value) + (unit ? " " + unit : "");

  /** An amount as it was written: its number and unit, or null where it is none. */
  const readAmount = (text) => {
    const trimmed = strip(text);
    if (trimmed.length > 40) { return null; }
    const clock = /^([0-9]{1,4}):([0-5][0-9])$/.exec(trimmed);
    if (clock) { return { value: whole(Number(clock[1]) * 60 + Number(clock[2])), unit: "s" }; }
    const plain = /^(-?[0-9]+)(?:\.([0-9]+))?(?: *([a-z]+|%))?$/.exec(trimmed);
    if (!plain || (plain[3] && !Object.hasOwn(units, plain[3]))) { return null; }
    const digits = plain[2] || "";
    return { value: ratio(BigInt(plain[1] + digits), 10n ** BigInt(digits.length)), unit: plain[3] || "" };
  };

  // ---- values --------------------------------------------------------------------------------------------
  const at = (scale, position) => plus(readRatio(scale.least), times(readRatio(scale.step), whole(position)));
  const showValue = (values, position) =>
    values.words ? values.words[position] : showAmount(at(values, position), values.unit);
  const base = (values, position) =>
    values.words ? whole(position) : times(at(values, position), factor(values.unit));

  /** The position of a value as it was written, or -1. */
  const readValue = (values, text) => {
    if (values.words) { return values.words.indexOf(strip(text)); }
    const amount = readAmount(text);
    if (!amount) { return -1; }
    const same = amount.unit === "" || units[amount.unit][0] === units[values.unit][0];
    if (!same) { return -1; }
    const value = amount.unit === "" ? amount.value
      : over(times(amount.value, factor(amount.unit)), factor(values.unit));
    const steps = over(plus(value, negate(readRatio(values.least))), readRatio(values.step));
    return steps[1] === 1n && steps[0] >= 0n && steps[0] < BigInt(values.count) ? Number(steps[0]) : -1;
  };

  // ---- days ----------------------------------------------------------------------------------------------
  const day = (date) => Math.round(Date.parse(date + "T00:00:00Z") / 86400000);

  class Refused extends Error {
    constructor(code, subjects = []) { super(code); this.code = code; this.subjects = subjects; }
  }

  // ---- the trainee ---------------------------------------------------------------------------------------
  /** Facts and assessments as positions; the texts as the program writes them. */
  const readTrainee = (program, trainee) => {
    const facts = trainee.facts || {};
    const assessment = trainee.assessment || {};
    const unknown = (given, known) => Object.keys(given).sort().find((name) => !known.some((k) => k.name === name));
    let stray = unknown(facts, program.facts);
    if (stray !== undefined) { throw new Refused("unknown name", [stray]); }
    stray = unknown(assessment, program.assessments);
    if (stray !== undefined) { throw new Refused("unknown name", [stray]); }
    const read = { facts: [], assessment: [], texts: { facts: {}, assessment: {} } };
    for (const fact of program.facts) {
      if (!Object.hasOwn(facts, fact.name)) { throw new Refused("missing fact", [fact.name]); }
      const items = facts[fact.name];
      const [least, most] = fact.list || [1, 1];
      if (items.length < least || items.length > most) { throw new Refused("wrong number", [fact.name]); }
      const positions = items.map((item) => {
        const position = readValue(fact.values, item);
        if (position < 0) { throw new Refused("wrong value", [fact.name, item]); }
        return position;
      }).sort((a, b) => b - a);
      read.facts.push(positions);
      put(read.texts.facts, fact.name, positions.map((position) => showValue(fact.values, position)));
    }
    for (const asked of program.assessments) {
      const given = get(assessment, asked.name);
      const text = given === undefined ? "" : given;
      if (!isBlank(text)) {
        const position = readValue(asked.values, text);
        if (position < 0) { throw new Refused("wrong value", [asked.name, text]); }
        read.assessment.push(position);
        put(read.texts.assessment, asked.name, showValue(asked.values, position));
      } else if (asked.otherwise !== null) {
        read.assessment.push(asked.otherwise);
      } else {
        throw new Refused("missing assessment", [asked.name]);
      }
    }
    return read;
  };

  // ---- ladders -------------------------------------------------------------------------------------------
  const limitBase = (program, fit, limit) => {
    if (limit[0] === "fixed") { return readRatio(limit[1]); }
    if (limit[0] === "share") {
      return times(base(program.facts[limit[2]].values, fit.facts[limit[2]][0]), readRatio(limit[1]));
    }
    return base(program.assessments[limit[1]].values, fit.assessment[limit[1]]);
  };

  /** The trainee's rungs in a stage, easiest first. */
  const rungs = (program, fit, stage) => {
    const ladder = program.stages[stage].ladder;
    if (ladder[0] === "named") { return ladder[1].map((name) => ({ name, amount: null, single: false })); }
    if (ladder[0] === "amounts") {
      return ladder[1].map((text) => ({
        name: showAmount(readRatio(text), ladder[2]), amount: times(readRatio(text), factor(ladder[2])), single: false,
      }));
    }
    if (ladder[0] === "run") {
      const last = over(limitBase(program, fit, ladder[4]), factor(ladder[3]));
      const found = [];
      for (let value = readRatio(ladder[1]); compare(value, last) <= 0; value = plus(value, readRatio(ladder[2]))) {
        found.push({ name: showAmount(value, ladder[3]), amount: times(value, factor(ladder[3])), single: false });
      }
      return found;
    }
    return ownItems(program.facts[ladder[1]], fit.facts[ladder[1]], ladder);
  };

  const ownItems = (fact, items, ladder) => {
    const found = [];
    const add = (amount, single) => found.push({
      name: showAmount(over(amount, factor(fact.values.unit)), fact.values.unit), amount, single,
    });
    if (ladder[2]) {
      for (let used = items.length; used >= 2; used -= 1) {
        add(items.slice(0, used).map((item) => base(fact.values, item)).reduce(plus, ZERO), false);
      }
    }
    [...new Set(items)].forEach((item) => add(base(fact.values, item), true));
    if (ladder[3] !== null) { found.push({ name: ladder[3], amount: ZERO, single: false }); }
    return found;
  };

  const standing = (program, stage, number, rung) => ({
    stage, "stage name": program.stages[stage].name, rung: number, "rung name": rung.name,
  });
  const samePlace = (a, b) => a["stage name"] === b["stage name"] && a["rung name"] === b["rung name"];
  const GOAL = "goal";

  /** Where somebody stands in a stage whose ladder may have changed, and what it is instead of their rung. */
  const kept = (program, fit, stage, name) => {
    const all = rungs(program, fit, stage);
    const make = (index, instead) => ({ at: standing(program, stage, index + 1, all[index]), instead });
    const named = all.findIndex((rung) => rung.name === name);
    if (named >= 0) { return make(named, null); }
    const ladder = program.stages[stage].ladder;
    const unit = ladder[0] === "amounts" ? ladder[2] : ladder[0] === "run" ? ladder[3]
      : ladder[0] === "each" ? program.facts[ladder[1]].values.unit : "";
    const amount = readAmount(name);
    if (amount && (amount.unit === "" || units[amount.unit][0] === units[unit][0])) {
      const held = amount.unit === "" ? times(amount.value, factor(unit)) : times(amount.value, factor(amount.unit));
      const same = all.findIndex((rung) => rung.amount && compare(rung.amount, held) === 0);
      if (same >= 0) { return make(same, "same amount"); }
      const easier = (rung) => rung.amount
        && (ladder[0] === "each" ? compare(rung.amount, held) > 0 : compare(rung.amount, held) < 0);
      for (let index = all.length - 1; index >= 0; index -= 1) {
        if (easier(all[index])) { return make(index, "easier rung"); }
      }
    }
    return all.length ? make(0, "bottom rung") : null;
  };

  const chooseRung = (program, fit, stage, choice, left) => {
    const all = rungs(program, fit, stage);
    if (!all.length) { return null; }
    const pick = (index) => (index < 0 ? null : standing(program, stage, index + 1, all[index]));
    if (choice[0] === "bottom") { return pick(0); }
    if (choice[0] === "top") { return pick(all.length - 1); }
    if (choice[0] === "named") { return pick(all.findIndex((rung) => rung.name === choice[1])); }
    if (choice[0] === "single") {
      const single = all.findIndex((rung) => rung.single);
      return pick(single < 0 ? all.length - 1 : single);
    }
    if (choice[0] === "upto") {
      const most = limitBase(program, fit, choice[1]);
      let best = -1;
      all.forEach((rung, index) => {
        const fits = rung.amount && compare(rung.amount, most) <= 0;
        if (fits && (best < 0 || compare(rung.amount, all[best].amount) >= 0)) { best = index; }
      });
      return pick(best < 0 ? 0 : best);
    }
    const name = program.stages[stage].name;
    const last = Object.hasOwn(left, name) ? kept(program, fit, stage, left[name]) : null;
    return last ? last.at : pick(0);
  };

  /** Where a target leads: a standing, GOAL, or null where it is not there for this trainee. */
  const follow = (program, fit, target, from, left) => {
    switch (target[0]) {
      case "same": return from;
      case "goal": return GOAL;
      case "start": return start(program, fit, left);
      case "stage": return chooseRung(program, fit, target[1], target[2], left);
      default: return byRungs(program, fit, target, from);
    }
  };

  const byRungs = (program, fit, target, from) => {
    const all = rungs(program, fit, from.stage);
    const [, number, up] = target;
    if (up && from.rung >= all.length) {
      if (from.stage + 1 === program.stages.length) { return GOAL; }
      const next = rungs(program, fit, from.stage + 1);
      return next.length ? standing(program, from.stage + 1, 1, next[0]) : null;
    }
    const wanted = up ? Math.min(all.length, from.rung + number) : Math.max(1, from.rung - number);
    return standing(program, from.stage, wanted, all[wanted - 1]);
  };

  const destination = (program, fit, rule, from, left) => {
    const all = rungs(program, fit, from.stage);
    const isEnd = rule.kind === "advance" ? from.rung === all.length : rule.kind === "fall back" && from.rung <= 1;
    return follow(program, fit, isEnd && rule.end ? rule.end : rule.to, from, left);
  };

  const start = (program, fit, left) => {
    const rule = placeRule(program, fit);
    return follow(program, fit, rule ? rule.to : ["stage", 0, ["bottom"]], null, left);
  };

  const placeRule = (program, fit) =>
    (program.place ? decide(program.place, positions(program, program.place, { fit, placing: true })) : null);

  // ---- what rules see ------------------------------------------------------------------------------------
  const isLogged = (seen, measure) => seen.entries[measure].some((position) => position !== null);
  const reading = (program, seen, measure) => {
    const logged = seen.entries[measure][0];
    return logged !== null ? logged : program.measures[measure].otherwise;
  };
  const taken = (program, seen, measure, take) => {
    const all = seen.entries[measure].filter((position) => position !== null);
    if (!all.length) { return program.measures[measure].otherwise; }
    return take === "highest" ? Math.max(...all) : take === "lowest" ? Math.min(...all)
      : take === "first" ? all[0] : all[all.length - 1];
  };
  const inSet = (program, seen, measure, set) => {
    const logged = seen.entries[measure][set];
    return logged !== null || isLogged(seen, measure) ? logged : program.measures[measure].otherwise;
  };
  const inBase = (values, position) => (position === null ? null : base(values, position));

  const count = (seen, name) => ({
    "sets logged": seen.sets, "sessions here": seen.sessionsHere, "days here": seen.daysHere,
    "days away": seen.daysAway,
  }[name]);

  /** The number of a quantity in base units, or null; `set` matters only to what is read set by set. */
  const figure = (program, seen, quantity, set) => {
    switch (quantity.q) {
      case "logged": return seen.placing
        ? base(program.assessments[quantity.m].values, seen.fit.assessment[quantity.m])
        : inBase(program.measures[quantity.m].values, reading(program, seen, quantity.m));
      case "taken": return quantity.take === "total" ? total(program, seen, quantity.m)
        : inBase(program.measures[quantity.m].values, taken(program, seen, quantity.m, quantity.take));
      case "set": return inBase(program.measures[quantity.m].values, inSet(program, seen, quantity.m, set));
      case "known": return program.facts[quantity.f].list ? whole(seen.fit.facts[quantity.f].length)
        : base(program.facts[quantity.f].values, seen.fit.facts[quantity.f][0]);
      case "counted": return whole(count(seen, quantity.name));
      case "previous": return seen.previous[quantity.m] === undefined ? null : seen.previous[quantity.m];
      default: return quantity.take ? overSets(program, seen, quantity)
        : formula(program, seen, quantity.formula, set);
    }
  };

  const total = (program, seen, measure) => {
    const values = program.measures[measure].values;
    const all = seen.entries[measure].filter((position) => position !== null);
    if (!all.length) { return inBase(values, program.measures[measure].otherwise); }
    return all.map((position) => base(values, position)).reduce(plus, ZERO);
  };

  const parts = (f) => (f[0] === "num" ? [] : f[0] === "of" ? [f[1]]
    : f[0] === "-" || f[0] === "guard" ? parts(f[1]) : [...parts(f[1]), ...parts(f[2])]);

  const overSets = (program, seen, quantity) => {
    const logged = parts(quantity.formula).filter((part) => part.q !== "previous");
    let found = null;
    for (let set = 0; set < seen.sets; set += 1) {
      if (logged.every((part) => figure(program, seen, part, set) !== null)) {
        const next = formula(program, seen, quantity.formula, set);
        if (next !== null) { found = found === null ? next : choose(quantity.take, found, next); }
      }
    }
    return found;
  };

  const choose = (take, before, next) => {
    switch (take) {
      case "highest": return compare(before, next) >= 0 ? before : next;
      case "lowest": return compare(before, next) <= 0 ? before : next;
      case "first": return before;
      case "last": return next;
      default: return plus(before, next);
    }
  };

  const unguarded = (f) => (f[0] === "guard" ? [] : f[0] === "num" ? [] : f[0] === "of"
    ? (f[1].q === "previous" ? [f[1]] : []) : f[0] === "-" ? unguarded(f[1]) : [...unguarded(f[1]), ...unguarded(f[2])]);

  const formula = (program, seen, f, set) => {
    switch (f[0]) {
      case "num": return readRatio(f[1]);
      case "of": return figure(program, seen, f[1], set);
      case "-": { const inner = formula(program, seen, f[1], set); return inner === null ? null : negate(inner); }
      case "guard": {
        const none = unguarded(f[1]).some((part) => figure(program, seen, part, set) === null);
        return none ? readRatio(f[2]) : formula(program, seen, f[1], set);
      }
      default: {
        const left = formula(program, seen, f[1], set);
        const right = left === null ? null : formula(program, seen, f[2], set);
        return right === null ? null : f[0] === "+" ? plus(left, right) : f[0] === "*" ? times(left, right)
          : over(left, right);
      }
    }
  };

  const isUnder = (edge, value) => {
    const order = compare(value, readRatio(edge[0]));
    return order > 0 || (order === 0 && !edge[1]);
  };

  /** The position on an axis, or -1 where its quantity has no value. */
  const position = (program, axis, seen) => {
    if (axis.cuts) {
      const value = figure(program, seen, axis.of, 0);
      return value === null ? -1 : axis.cuts.filter((edge) => isUnder(edge, value)).length;
    }
    const own = () => {
      switch (axis.of.q) {
        case "logged": return seen.placing ? seen.fit.assessment[axis.of.m] : reading(program, seen, axis.of.m);
        case "taken": return taken(program, seen, axis.of.m, axis.of.take);
        case "known": return program.facts[axis.of.f].list ? seen.fit.facts[axis.of.f].length
          : seen.fit.facts[axis.of.f][0];
        default: return count(seen, axis.of.name);
      }
    };
    const found = own();
    if (found === null) { return -1; }
    return axis.count ? Math.min(found, axis.count[1]) - axis.count[0] : found;
  };

  const positions = (program, layer, seen) => layer.axes.map((axis) => position(program, axis, seen));

  /** The rule that speaks at these positions, or null where the list passes. */
  const decide = (layer, point) => {
    const box = layer.boxes.find((each) => each.sides.every(([from, to], axis) =>
      from <= point[axis] && point[axis] < to));
    return box ? layer.rules[box.rule] : layer.otherwise < 0 ? null : layer.rules[layer.otherwise];
  };

  // ---- states --------------------------------------------------------------------------------------------
  const id = (program) => ({ name: program.name, version: program.version, fingerprint: program.fingerprint });
  const copy = (state) => JSON.parse(JSON.stringify(state));

  const draft = (state, event) => {
    const next = copy(state);
    if (state.latest !== event.date) { next.ids = []; }
    next.latest = event.date;
    if (event.id !== undefined && !next.ids.includes(event.id)) { next.ids.push(event.id); }
    return next;
  };
  const startAgain = (next) => { next.entered = next.latest; next["sessions here"] = 0; next.tallies = {}; };
  const go = (next, to) => {
    if (to === GOAL) {
      next.status = "reached";
      delete next["stopped by"];
      startAgain(next);
      return;
    }
    if (!samePlace(to, next.at)) { startAgain(next); }
    next.at = to;
    remember(next);
  };
  const remember = (next) => { if (next.at.rung > 0) { put(next.left, next.at["stage name"], next.at["rung name"]); } };
  const noPlace = (program) => {
    const stage = program.stages.length - 1;
    return { stage, "stage name": program.stages[stage].name, rung: 0, "rung name": "" };
  };

  const decision = (kind, state, after, more = {}) => ({ kind, before: state, after, ...more });

  const enrol = (program, event) => {
    const fit = readTrainee(program, event);
    const rule = placeRule(program, fit);
    const to = start(program, fit, {});
    const first = {
      form: 1, program: id(program), ...fit.texts, status: "training",
      at: to === GOAL ? noPlace(program) : to, entered: event.date, "sessions here": 0, tallies: {}, left: {},
      previous: {}, latest: event.date, ids: event.id === undefined ? [] : [event.id],
    };
    if (to === GOAL) { first.status = "reached"; }
    remember(first);
    return decision("placed", null, first, { rule });
  };

  // ---- sessions ------------------------------------------------------------------------------------------
  const readEntries = (program, event) => {
    const sets = event.sets || [];
    if (sets.length > 30) { throw new Refused("too many sets", [String(sets.length)]); }
    const number = Math.max(1, sets.length);
    const entries = program.measures.map((measure) => new Array(measure.set ? number : 1).fill(null));
    const row = (readings, set) => {
      program.measures.forEach((measure, index) => {
        if (!Object.hasOwn(readings, measure.name) || isBlank(readings[measure.name])) { return; }
        if (measure.set !== (set !== null)) {
          throw new Refused(measure.set ? "not for the session" : "not in a set", [measure.name]);
        }
        const found = readValue(measure.values, readings[measure.name]);
        if (found < 0) { throw new Refused("wrong value", [measure.name, readings[measure.name]]); }
        entries[index][set === null ? 0 : set] = found;
      });
      const stray = Object.keys(readings).sort()
        .find((name) => !program.measures.some((measure) => measure.name === name));
      if (stray !== undefined) { throw new Refused("unknown name", [stray]); }
    };
    row(event.readings || {}, null);
    sets.forEach((set, index) => row(set, index));
    return { entries, sets: number };
  };

  const session = (program, state, fit, event) => {
    if (state.status === "stopped") { throw new Refused("stopped"); }
    const { entries, sets } = readEntries(program, event);
    const { placed, move } = absence(program, state, fit, event.date);
    if (placed.status === "reached") {
      const after = draft(placed, event);
      after["last session"] = event.date;
      return decision("hold", state, after, { break: move });
    }
    const stage = program.stages[placed.at.stage];
    const previous = {};
    program.previous.forEach((measure) => {
      const text = get(state.previous, program.measures[measure].name);
      const found = text === undefined ? -1 : readValue(program.measures[measure].values, text);
      if (found >= 0) { previous[measure] = base(program.measures[measure].values, found); }
    });
    const seen = {
      fit, entries, sets, previous, sessionsHere: placed["sessions here"] + 1,
      daysHere: day(event.date) - day(placed.entered), daysAway: 0,
    };
    const layers = [program.stop, program.every, stage.rules];
    const points = layers.map((layer) => positions(program, layer, seen));
    const missing = stage.needed.filter((measure) =>
      program.measures[measure].otherwise === null && !isLogged(seen, measure));
    if (missing.length) { throw new Refused("missing measure", missing.map((m) => program.measures[m].name)); }
    if (points.some((point) => point.includes(-1))) { throw new Refused("no whole set"); }
    const spoke = layers.map((layer, index) => decide(layer, points[index])).find((rule) => rule !== null);
    return judged(program, state, placed, fit, event, { seen, rule: spoke, move, stage });
  };

  /** What the rules after a break make of the time away: a state, and the move if there is one. */
  const absence = (program, state, fit, date) => {
    if (state.status !== "training" || state["last session"] === undefined || !program.break) {
      return { placed: state, move: null };
    }
    const away = day(date) - day(state["last session"]);
    const seen = {
      fit, entries: program.measures.map((measure) => [null]), sets: 1, previous: {},
      sessionsHere: state["sessions here"], daysHere: day(date) - day(state.entered), daysAway: away,
    };
    const rule = decide(program.break, positions(program, program.break, seen));
    const to = destination(program, fit, rule, state.at, state.left);
    if (to !== GOAL && samePlace(to, state.at)) { return { placed: state, move: null }; }
    const placed = copy(state);
    placed.ids = state.latest === date ? placed.ids : [];
    placed.latest = date;
    go(placed, to);
    return { placed, move: { rule, from: state.at, to, away } };
  };

  const judged = (program, state, placed, fit, event, { seen, rule, move, stage }) => {
    const met = (get(placed.tallies, rule.label) || { sessions: [] }).sessions.filter(Boolean).length + 1;
    const repeats = rule.repeat[0] > 1;
    const progress = repeats && rule.kind !== "stop" ? { met, wanted: rule.repeat[0], within: rule.repeat[1] } : null;
    const fires = !progress || met >= rule.repeat[0];
    const to = rule.kind === "stop" || !fires ? placed.at
      : destination(program, fit, rule, placed.at, placed.left);
    const kind = rule.kind === "stop" ? "stop" : !fires ? "hold"
      : rule.kind === "advance" && to === GOAL ? "reached" : rule.kind;
    const after = draft(placed, event);
    after["last session"] = event.date;
    program.previous.forEach((measure) => {
      const own = program.measures[measure];
      const found = own.take ? taken(program, seen, measure, own.take) : reading(program, seen, measure);
      if (found !== null) { put(after.previous, own.name, showValue(own.values, found)); }
    });
    if (kind === "stop") {
      after.status = "stopped";
      after["stopped by"] = rule.label;
      startAgain(after);
    } else {
      go(after, to);
      if (to !== GOAL && samePlace(to, placed.at)) {
        after["sessions here"] += 1;
        tally(after, stage, rule, fires);
      }
    }
    return decision(kind, state, after, { rule, break: move, progress, seen });
  };

  const tally = (after, stage, rule, fires) => {
    stage.counted.forEach((counted) => {
      const [, window, row] = counted.repeat;
      const meets = counted.label === rule.label;
      const before = (get(after.tallies, counted.label) || { sessions: [] }).sessions;
      let sessions = row && !meets ? [] : [...before, meets].slice(-(window - 1));
      if (row && meets && fires) { sessions = []; }
      while (sessions.length && !sessions[0]) { sessions = sessions.slice(1); }
      delete after.tallies[counted.label];
      if (sessions.length) { put(after.tallies, counted.label, { code: counted.code, sessions }); }
    });
  };

  // ---- other events --------------------------------------------------------------------------------------
  const clearance = (program, state, fit, event) => {
    if (state.status !== "stopped") { throw new Refused("not stopped"); }
    const rule = program.stop.rules.find((stop) => stop.label === state["stopped by"]) || null;
    const after = draft(state, event);
    after.status = "training";
    delete after["stopped by"];
    if (rule) { go(after, destination(program, fit, rule, state.at, state.left)); }
    return decision("resume", state, after, { rule });
  };

  const factsChanged = (program, state, event) => {
    const fit = readTrainee(program, {
      facts: { ...state.facts, ...(event.facts || {}) },
      assessment: { ...state.assessment, ...(event.assessment || {}) },
    });
    const after = draft(state, event);
    Object.assign(after, fit.texts);
    const left = state.at.rung > 0 ? kept(program, fit, state.at.stage, state.at["rung name"]) : null;
    let instead = null;
    if (left) {
      instead = left.instead;
      if (instead === "same amount") {
        after.at = left.at;
        remember(after);
      } else {
        go(after, left.at);
      }
    } else if (state.status === "reached") {
      go(after, GOAL);
      after.at = noPlace(program);
    } else {
      instead = "start";
      const to = start(program, fit, after.left);
      if (to === GOAL && state.status === "stopped") { throw new Refused("stopped"); }
      go(after, to);
      if (to === GOAL) { after.at = noPlace(program); }
    }
    const stays = instead === null || instead === "same amount" || state.status === "reached";
    return decision(stays ? "hold" : "moved", state, after, { instead });
  };

  const CHOICES = { "": ["bottom"], "on the top rung": ["top"], "on the first single rung": ["single"],
    "where they left it": ["left"] };

  const sameAmount = (a, b) => {
    const [one, other] = [readAmount(a), readAmount(b)];
    return one !== null && other !== null && units[one.unit][0] === units[other.unit][0]
      && compare(times(one.value, factor(one.unit)), times(other.value, factor(other.unit))) === 0;
  };

  /** The place in a stage that these words begin with, the longest name first, or null. */
  const inStage = (program, state, fit, words) => {
    const isOf = ({ name }) => words === name || [" on ", " where ", " / "].some((after) => words.startsWith(name + after));
    const stages = program.stages.map(({ name }, index) => ({ name, index })).filter(isOf)
      .sort((a, b) => b.name.length - a.name.length);
    if (!stages.length) { return null; }
    const { name, index } = stages[0];
    const rest = strip(words.slice(name.length));
    const choice = get(CHOICES, rest);
    if (choice) { return chooseRung(program, fit, index, choice, state.left); }
    const lead = ["on rung ", "/ "].find((before) => rest.startsWith(before));
    if (lead === undefined) { return null; }
    const wanted = rest.slice(lead.length);
    const all = rungs(program, fit, index);
    const ways = [(rung) => rung.name === wanted, (rung) => sameAmount(rung.name, wanted),
      (rung, at0) => lead === "/ " && String(at0 + 1) === wanted];
    const found = ways.map((way) => all.findIndex(way)).find((at0) => at0 >= 0);
    return found === undefined ? null : standing(program, index, found + 1, all[found]);
  };

  /** Where a coach's or a trainee's own words lead: `stage / 2`, `stage NAME on rung 40 kg`, `start`, `goal`. */
  const movePlace = (program, state, fit, text) => {
    const words = strip(text).replace(/[ \t\n\u000b\f\r]+/g, " ");
    if (words === "goal") { return GOAL; }
    if (words === "start") { return start(program, fit, state.left); }
    return (words.startsWith("stage ") ? inStage(program, state, fit, words.slice("stage ".length)) : null)
      || inStage(program, state, fit, words);
  };

  const moved = (program, state, fit, event) => {
    if (isBlank(event.why)) { throw new Refused("no reason"); }
    const to = movePlace(program, state, fit, event.to);
    if (to === null) { throw new Refused("no such place", [event.to]); }
    if (to === GOAL && state.status === "stopped") { throw new Refused("stopped"); }
    const after = draft(state, event);
    if (after.status === "reached") { after.status = "training"; }
    startAgain(after);
    go(after, to);
    return decision("moved", state, after);
  };

  /** Decides an event; a state of null is somebody who is not enrolled yet. */
  const step = (program, state, event) => {
    try {
      if (state === null) {
        if (event.event !== "enrol") { throw new Refused("not enrolled"); }
        return enrol(program, event);
      }
      if (event.id !== undefined && state.ids.includes(event.id)) { throw new Refused("already recorded"); }
      if (event.date < state.latest) { throw new Refused("earlier date", [event.date, state.latest]); }
      if (event.event === "enrol") { throw new Refused("already enrolled"); }
      if (state.program.fingerprint !== program.fingerprint) { throw new Refused("other version"); }
      const fit = readTrainee(program, state);
      switch (event.event) {
        case "session": return session(program, state, fit, event);
        case "clearance": return clearance(program, state, fit, event);
        case "move": return moved(program, state, fit, event);
        case "facts": return factsChanged(program, state, event);
        default: throw new Refused("no such event");
      }
    } catch (refused) {
      if (!(refused instanceof Refused)) { throw refused; }
      return decision("refused", state, state, { refusal: { code: refused.code, subjects: refused.subjects } });
    }
  };

  /** Where somebody is on a day before they have trained: the state after the break's move, and the move. */
  const ahead = (program, state, date) => absence(program, state, readTrainee(program, state), date);

  /** What a quantity was, as people write it; a dash where it has no value. */
  const shown = (program, seen, quantity) => {
    const value = figure(program, seen, quantity, 0);
    if (value === null) { return "-"; }
    const of = quantity.m === undefined ? quantity.f === undefined ? null : program.facts[quantity.f]
      : (seen.placing ? program.assessments : program.measures)[quantity.m];
    if (of && of.values.words) { return of.values.words[Number(value[0])]; }
    const unit = of && !of.list ? of.values.unit : quantity.unit || "";
    return showAmount(over(value, factor(unit)), unit);
  };

  /** What rules see of a session, whatever it leads to. */
  const look = (program, state, event) => {
    const fit = readTrainee(program, state);
    const { entries, sets } = readEntries(program, event);
    const { placed } = absence(program, state, fit, event.date);
    const previous = {};
    program.previous.forEach((measure) => {
      const text = get(state.previous, program.measures[measure].name);
      const found = text === undefined ? -1 : readValue(program.measures[measure].values, text);
      if (found >= 0) { previous[measure] = base(program.measures[measure].values, found); }
    });
    return { fit, entries, sets, previous, sessionsHere: placed["sessions here"] + 1,
      daysHere: day(event.date) - day(placed.entered), daysAway: 0, placed };
  };

  return { step, ahead, look, rungs: (program, state, stage) => rungs(program, readTrainee(program, state), stage),
    readValue, showValue, isAmount: (text) => readAmount(text) !== null, shown, positions, figure, get, put };
})();
if (typeof module !== "undefined") { module.exports = Stepper; }
