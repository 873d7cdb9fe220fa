// How many chord symbols and note sets tonal reads in a second, on the lists that the Java benchmarks read.
// Prints "spell RATE" and "name RATE". Run from the folder of the pom, with tonal installed (NODE_PATH says where).
const { readFileSync } = require("node:fs");
const { Chord } = require("tonal");

const WARM_UP = 3;
const ROUNDS = 10;
const ROUND_NANOS = 1_000_000_000n;

const lines = (name) => readFileSync(`src/bench/lists/${name}.txt`, "utf8").trim().split("\n");
const symbols = lines("symbols");
const sets = lines("notes").map((line) => line.split(" "));

const spell = (symbol) => Chord.get(symbol).notes;
const name = (notes) => Chord.detect(notes);

const unread = symbols.filter((symbol) => spell(symbol).length === 0);
if (unread.length > 0) {
    throw new Error(`no match is fair on what one side cannot read: ${unread.join(" ")}`);
}

let seen = 0;

function rate(action, inputs) {
    const start = process.hrtime.bigint();
    let done = 0;
    while (process.hrtime.bigint() - start < ROUND_NANOS) {
        for (const input of inputs) {
            seen += action(input).length;
        }
        done += inputs.length;
    }
    return (done * 1e9) / Number(process.hrtime.bigint() - start);
}

function mean(action, inputs) {
    for (let i = 0; i < WARM_UP; i++) {
        rate(action, inputs);
    }
    let sum = 0;
    for (let i = 0; i < ROUNDS; i++) {
        sum += rate(action, inputs);
    }
    return Math.round(sum / ROUNDS);
}

console.log(`spell ${mean(spell, symbols)}`);
console.log(`name ${mean(name, sets)}`);
if (seen === 0) {
    throw new Error("nothing was read");
}
