"""Brings a practice engine into limits by doing what the advice says: python3 samples/follow-advice.py samples/osprey-v8.car.json --seed 7 --difficulty 1"""
import json, os, subprocess, sys

tickover = os.environ.get("TICKOVER", "./tickover").split()
engine = subprocess.Popen([*tickover, "practice", *sys.argv[1:], "--json"], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True)
print(engine.stdout.readline(), end="")

def say(act):
    engine.stdin.write(json.dumps(act) + "\n")
    engine.stdin.flush()
    return json.loads(engine.stdout.readline())

def act(move):
    read = {"read": move["read"]}
    match move["kind"]:
        case "read" if move["barrels"]: return read | {"barrel": move["barrels"]} | ({"held": move["heldRpm"]} if move["heldRpm"] else {})
        case "read": return read | {"round": move["heldRpm"] or "idle"}
        case "turn": return {"turn": move["adjuster"], "turns": move["turns"]}
        case "rodsOff" | "rodsOn": return {"rods": move["kind"][4:].lower()}
        case "offerRod": return {"offer": move["adjuster"]}
        case "look": return {"look": move["adjuster"]}
        case "repair": return {"repair": move["fault"]}

for _ in range(200):
    move = say({"advise": True})["next"]
    if move["kind"] == "done":
        break
    print(move["who"] + ". " + move["what"] + (" " if move["what"].endswith("?") else ". ") + say(act(move))["said"])
print(json.dumps(say({"finish": True}), indent=1))
