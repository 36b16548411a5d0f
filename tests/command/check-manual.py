#!/usr/bin/env python3
"""The manual page and the shell's completion know every subcommand and option that the program's own help shows, and no other."""
import pathlib
import re
import subprocess
import sys

program, root = str(pathlib.Path(sys.argv[1]).resolve()), pathlib.Path(sys.argv[2])
manual = (root / 'data/trammel.1').read_text(encoding='utf-8').replace('\\-', '-')
completion = root / 'data/completion/trammel'
checks, complaints = 0, []


def check(good, complaint):
    global checks
    checks += 1
    if not good:
        complaints.append(complaint)


def help_of(*words):
    return subprocess.run([program, *words, '--help'], capture_output=True, text=True, check=True).stdout


def options_of(text):
    return set(re.findall(r'^ +(?:-\w, )?(--[a-z-]+)', text, re.MULTILINE))


def completed(*words):
    """What the completion offers for the last word."""
    script = f'''source "{completion}"
        COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); compopt () {{ :; }}
        _trammel; printf '%s\\n' "${{COMPREPLY[@]}}"'''
    done = subprocess.run(['bash', '-c', script, 'bash', *words], capture_output=True, text=True, cwd=root / 'data/examples')
    check(done.returncode == 0 and not done.stderr, f'completing {words}: {done.stderr}')
    return set(done.stdout.split('\n')) - {''}


overall = help_of()
subcommands = set(re.findall(r'^  ([a-z]+) +\w', overall.split('Subcommands')[1].split('Options:')[0], re.MULTILINE))
check(subcommands, 'the help names no subcommand')
check(subcommands <= completed('trammel', ''), 'the completion lacks a subcommand')
check(completed('trammel', '--') == options_of(overall), 'the completion\'s options of the whole program')
known = options_of(overall)
for word in sorted(subcommands):
    options = options_of(help_of(word))
    known |= options
    offered = {option.split('=')[0] for option in completed('trammel', word, '--')}
    check(offered == options, f'{word}: the completion offers {sorted(offered)}, the help {sorted(options)}')
    check(f'trammel {word}' in manual and f'.B {word}\n' in manual, f'the manual lacks {word}')
    check('heron-tourer.trammel' in completed('trammel', word, 'heron'), f'{word}: documents are not completed')
for option in sorted(known):
    check(option in manual, f'the manual lacks {option}')
for option in set(re.findall(r'--[a-z]+(?:-[a-z]+)*', manual)):
    check(option in known, f'the manual has {option}, which the program has not')
report = subprocess.run([program, 'report', root / 'data/examples/saltmarsh-racer.trammel'], capture_output=True, text=True, check=True).stdout
cautions = ' '.join(report.split('\nCautions\n')[1].split('\n\n')[0].split())
check(cautions and cautions in ' '.join(manual.split()), 'the manual has other cautions than the report')
check('help' in completed('trammel', '') and completed('trammel', 'help', '') == subcommands, 'help on a subcommand is not completed')
check('trammel help' in manual, 'the manual lacks help')
check(completed('trammel', 'report', 'x', '--units', '') == {'metric', 'inch'}, 'values after a blank')
papers = re.search(r'--paper=(\S+)', help_of('export'))[1].split('|')
check(len(papers) > 1 and completed('trammel', 'export', 'x', '--paper', '') == set(papers), 'other papers are completed than the help names')
told = re.search(r'--paper = .*\n.*\n(.*)\n', manual)[1]
check(re.findall(r'[a-z][a-z0-9-]+', told.replace('.BR', '').replace(' or ', ' ')) == papers, 'the manual names other papers than the help')
check(completed('trammel', 'report', 'x', '--units', '=', 'i') == {'inch'}, 'values after an equals sign')

for complaint in complaints:
    print(complaint)
print(f'{100 * (checks - len(complaints)) // checks}%: Checks: {checks}, Failures: {len(complaints)}, Errors: 0')
sys.exit(1 if complaints else 0)
