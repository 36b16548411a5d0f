#!/usr/bin/env python3
"""Runs each *.case: one command line and what it must give back.

    # why this case is here
    $ trammel check racer.trammel    LANGUAGE=de before it is the person's language
    = 1                        the exit status
    | a line of standard output
    ! a line of standard error
    @ out.png PNG 1754 x 1240  a file that was written: text as it is (": " before each line), pictures by kind and size

Each runs in a fresh folder with a copy of documents/, of the examples and a drawn plan bar.png, without a
display. Numbers are rounded to six digits that count, since the last ones differ from processor to processor. With --update the expected lines are written
anew from what the program does.
"""
import os
import pathlib
import re
import shlex
import shutil
import struct
import subprocess
import sys
import tempfile

import drawn_plan

here = pathlib.Path(__file__).resolve().parent
NUMBER = re.compile(r'-?\d+\.\d+(?:e[+-]?\d+)?|-?\d+e[+-]?\d+')


def rounded(match):
    if sum(letter.isdigit() for letter in match.group().split('e')[0].lstrip('-0.')) <= 6:
        return match.group()
    value = float(match.group())
    return '0' if abs(value) < 1e-12 else f'{value:.6g}'


def lines_of(text, mark):
    return [f'{mark} {line}'.rstrip() for line in NUMBER.sub(rounded, text).splitlines()]


def describe(path):
    data = path.read_bytes()
    if data.startswith(b'\x89PNG'):
        width, height = struct.unpack('>II', data[16:24])
        return [f'@ {path.name} PNG {width} x {height}']
    if data.startswith(b'%PDF'):
        return [f'@ {path.name} PDF']
    if b'<svg' in data[:1000]:
        return [f'@ {path.name} SVG']
    if data.endswith(b'EOF\r\n'):
        return [f'@ {path.name} DXF']
    return [f'@ {path.name}'] + lines_of(data.decode('utf-8').replace('\r\n', '\n'), ':')


def run(program, line, folder):
    words = shlex.split(line)
    language = [words.pop(0)[len('LANGUAGE='):]] if words[0].startswith('LANGUAGE=') else []
    assert words[0] == 'trammel', line
    environment = {name: value for name, value in os.environ.items() if name not in ('DISPLAY', 'WAYLAND_DISPLAY', 'LANGUAGE')}
    environment.update(LC_ALL='C.UTF-8', HOME=folder, XDG_STATE_HOME=folder + '/.state', XDG_CACHE_HOME=folder + '/.cache',
                       LANGUAGE=':'.join(language))
    before = set(os.listdir(folder))
    output = subprocess.PIPE
    if '>' in words:
        words, output = words[:words.index('>')], open(words[-1], 'w', encoding='utf-8')
    done = subprocess.run([program] + words[1:], cwd=folder, env=environment, stdout=output, stderr=subprocess.PIPE, text=True,
                          timeout=120)
    errors = '\n'.join(line for line in done.stderr.splitlines() if not is_sanitizers(line))
    result = [f'= {done.returncode}'] + lines_of(done.stdout or '', '|') + lines_of(errors, '!')
    for name in sorted(set(os.listdir(folder)) - before):
        path = pathlib.Path(folder, name)
        if path.is_file():
            result += describe(path)
    return result


def is_sanitizers(line):
    """The leak checker's closing table of what it was told to overlook."""
    return re.match(r'-{20,}$|Suppressions used:$|\s+count\s+bytes template$|\s+\d+\s+\d+ \S+$', line) is not None


def one_case(program, path, plan, update):
    text = path.read_text(encoding='utf-8').splitlines()
    head = [line for line in text if line.startswith(('#', '$'))]
    expected = [line for line in text if not line.startswith(('#', '$'))]
    command = next(line for line in head if line.startswith('$'))[2:]
    with tempfile.TemporaryDirectory() as folder:
        for document in sorted([*(here / 'documents').iterdir(), *(here / '../../data/examples').glob('*.trammel')]):
            shutil.copy(document, folder)
        shutil.copy(plan, folder)
        got = run(program, command, folder)
    if update:
        path.write_text('\n'.join(head + got) + '\n', encoding='utf-8')
        return []
    if got == expected:
        return []
    import difflib
    return [f'{path.name}: {command}'] + list(difflib.unified_diff(expected, got, 'expected', 'got', lineterm=''))


def main():
    program, update = str(pathlib.Path(sys.argv[1]).resolve()), '--update' in sys.argv
    cases = sorted(here.glob('*.case'))
    failed = 0
    with tempfile.TemporaryDirectory() as folder:
        plan = pathlib.Path(folder, 'bar.png')
        drawn_plan.write(plan)
        for path in cases:
            complaints = one_case(program, path, plan, update)
            failed += bool(complaints)
            print('\n'.join(complaints), end='\n' if complaints else '')
    print(f'{100 * (len(cases) - failed) // max(len(cases), 1)}%: Checks: {len(cases)}, Failures: {failed}, Errors: 0')
    sys.exit(1 if failed or not cases else 0)


main()
