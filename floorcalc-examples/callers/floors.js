// Plans a file, then asks a runner that is kept open. Usage: node floors.js floorcalc.jar
"use strict";
const { execFileSync, spawn } = require("node:child_process");
const { createInterface } = require("node:readline");

const java = ["-jar", process.argv[2]];

// A runner that is kept open: one job in, one answer out.
class Runner {
  constructor() {
    this.process = spawn("java", [...java, "plan", "--lines"], { stdio: ["pipe", "pipe", "inherit"] });
    this.answers = createInterface({ input: this.process.stdout })[Symbol.asyncIterator]();
  }

  async ask(job) {
    this.process.stdin.write(JSON.stringify(job) + "\n");
    return JSON.parse((await this.answers.next()).value);
  }

  close() {
    return new Promise((resolve) => {
      this.process.on("exit", resolve);
      this.process.stdin.end();
    });
  }
}

function show(answer) {
  if (answer.format === "floorcalc-refusal/1") {
    console.log(answer.outcome); // "refused", or "fault" where the program itself failed
    for (const mistake of answer.mistakes) {
      console.log(`  ${mistake.pointer}: ${mistake.message}`);
    }
    return;
  }
  const { boardsUsed, boardsAtLeast, packs } = answer.order;
  console.log(`${answer.title}: ${boardsUsed} boards, at least ${boardsAtLeast}; ${packs} packs`);
}

function hall(length) {
  return {
    format: "floorcalc-job/1",
    title: `Hall of ${length} mm (invented)`,
    board: { length: 2200, coverWidth: 185, thickness: 14, perPack: 6, construction: "engineered" },
    rooms: [{ name: "Hall", outline: [[0, 0], [length, 0], [length, 1500], [0, 1500]] }],
  };
}

async function main() {
  // One file, one plan; where the exit code is not 0 an error is thrown.
  const once = execFileSync("java", [...java, "plan", "study.json", "--json"], { maxBuffer: 1e9 });
  show(JSON.parse(once));

  // A conversation: the hall grows until it takes more than 3 packs.
  const runner = new Runner();
  let length = 2500;
  let plan = await runner.ask(hall(length));
  show(plan);
  while (plan.order.packs <= 3) {
    length += 500;
    plan = await runner.ask(hall(length));
    show(plan);
  }

  // A job with mistakes is refused, and the conversation goes on.
  const wrong = hall(3000);
  wrong.board.coverwidth = wrong.board.coverWidth;
  delete wrong.board.coverWidth;
  show(await runner.ask(wrong));
  show(await runner.ask(hall(3000)));
  console.log("exit code", await runner.close());
}

main();
