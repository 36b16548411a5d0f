#!/usr/bin/env python3
"""The document that arrange writes is the one it speaks of: sound, balanced at the aim, and arranged already."""
import json
import pathlib
import subprocess
import sys
import tempfile

program, documents = str(pathlib.Path(sys.argv[1]).resolve()), pathlib.Path(__file__).parent / 'documents'
checks, complaints = 0, []


def check(good, complaint):
    global checks
    checks += 1
    if not good:
        complaints.append(complaint)


def run(*words):
    return subprocess.run([program, *map(str, words)], capture_output=True, text=True)


with tempfile.TemporaryDirectory() as folder:
    new = pathlib.Path(folder) / 'arranged.trammel'
    told = run('arrange', documents / 'bays.trammel', '--json', '--output', new)
    check(told.returncode == 0 and not told.stderr, f'arrange --output: {told.stderr}')
    answer, report = json.loads(told.stdout), json.loads(run('report', new, '--json').stdout)
    places = {part['id']: part for part in report['parts']}
    for part in answer['parts']:
        check(abs(places[part['id']]['x_mm'] - part['x_mm']) <= 0.006, f'{part["id"]} stands elsewhere')
    check(abs(report['mass']['x_mm'] - report['balance']['target_x_mm']) < 0.05, 'it does not balance at the aim')
    again = json.loads(run('arrange', new, '--json').stdout)
    check(again['ballast_g'] == 0 and again['status'] == 'proved', 'arranged again it needs ballast')
    check(run('check', new).returncode == 0, 'it is not sound')

for complaint in complaints:
    print(complaint)
print(f'{100 * (checks - len(complaints)) // checks}%: Checks: {checks}, Failures: {len(complaints)}, Errors: 0')
sys.exit(bool(complaints))
