"""Plans a file, then asks a runner that is kept open. Usage: python3 floors.py floorcalc.jar"""
import json
import subprocess
import sys

JAVA = ["java", "-jar", sys.argv[1]]


class Refused(Exception):
    """What is wrong with a job; outcome is "refused", or "fault" where the program itself failed."""

    def __init__(self, refusal):
        super().__init__(refusal["outcome"])
        self.mistakes = refusal["mistakes"]


class Runner:
    """A runner that is kept open: one job in, one answer out."""

    def __init__(self):
        self.process = subprocess.Popen(JAVA + ["plan", "--lines"], stdin=subprocess.PIPE, stdout=subprocess.PIPE)

    def plan(self, job):
        self.process.stdin.write(json.dumps(job).encode("utf-8") + b"\n")
        self.process.stdin.flush()
        answer = json.loads(self.process.stdout.readline())
        if answer["format"] == "floorcalc-refusal/1":
            raise Refused(answer)
        return answer

    def close(self):
        self.process.stdin.close()
        return self.process.wait()


def show(plan):
    order = plan["order"]
    print(f"{plan['title']}: {order['boardsUsed']} boards, at least {order['boardsAtLeast']}; {order['packs']} packs")


def hall(length):
    return {
        "format": "floorcalc-job/1",
        "title": f"Hall of {length} mm (invented)",
        "board": {"length": 2200, "coverWidth": 185, "thickness": 14, "perPack": 6, "construction": "engineered"},
        "rooms": [{"name": "Hall", "outline": [[0, 0], [length, 0], [length, 1500], [0, 1500]]}],
    }


# One file, one plan.
once = subprocess.run(JAVA + ["plan", "study.json", "--json"], stdout=subprocess.PIPE)
if once.returncode != 0:
    sys.exit(once.returncode)
show(json.loads(once.stdout))

# A conversation: the hall grows until it takes more than 3 packs.
runner = Runner()
length = 2500
plan = runner.plan(hall(length))
show(plan)
while plan["order"]["packs"] <= 3:
    length += 500
    plan = runner.plan(hall(length))
    show(plan)

# A job with mistakes is refused, and the conversation goes on.
wrong = hall(3000)
wrong["board"]["coverwidth"] = wrong["board"].pop("coverWidth")
try:
    runner.plan(wrong)
except Refused as refused:
    print(refused)
    for mistake in refused.mistakes:
        print(f"  {mistake['pointer']}: {mistake['message']}")
show(runner.plan(hall(3000)))
print("exit code", runner.close())
