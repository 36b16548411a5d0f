#!/usr/bin/env python3
"""What the rooms of src/ agree on: nobody includes a room above, every header stands alone, every public function is
explained where it is declared, no file or function outgrows its reader, nothing is left to do later."""
import concurrent.futures
import os
import pathlib
import re
import subprocess
import sys

root = pathlib.Path(sys.argv[1])
compiler = sys.argv[2:]
source = root / 'src'

MAY_USE = {
    'geometry': set(),
    'aero': {'geometry'},
    'balance': {'geometry'},
    'plan': {'geometry'},
    'decoder': {'plan'},
    'document': {'geometry', 'aero', 'balance'},
    'figures': {'geometry', 'aero', 'balance', 'document'},
    'drawing': {'geometry', 'plan', 'document', 'figures'},
    'command': {'geometry', 'plan', 'document', 'figures', 'drawing'},
    'app': {'geometry', 'plan', 'document', 'figures', 'drawing'},
}
# What understands pictures and pages stays in the private program.
DECODERS = re.compile(r'#include <(gdk-pixbuf|poppler|librsvg|seccomp)')
# Above these no desktop library may be included; app alone knows GTK.
TOOLKIT = re.compile(r'#include <(gtk|adwaita|gdk/)')
PURE = {'geometry', 'aero', 'balance', 'plan'}
LONGEST_FILE, LONGEST_FUNCTION = 600, 80

checks, complaints = 0, []


def check(good, complaint):
    global checks
    checks += 1
    if not good:
        complaints.append(complaint)


def check_includes(path, text):
    room = path.relative_to(source).parts[0]
    for used in re.findall(r'#include "(\w+)/', text):
        if used != room and used in MAY_USE:
            check(used in MAY_USE[room], f'{path}: {room} may not use {used}')
    check(room == 'decoder' or not DECODERS.search(text), f'{path}: only the decoder may understand pictures and pages')
    check(room == 'app' or not TOOLKIT.search(text), f'{path}: only app may know the toolkit')
    if room in PURE:
        check('#include <glib' not in text and '#include <gio' not in text, f'{path}: the core is C alone')


def function_lengths(text):
    start = None
    for number, line in enumerate(text.split('\n'), 1):
        if line == '{':
            start = number
        elif line == '}' and start is not None:
            yield start, number - start + 1
            start = None


def check_size(path, text):
    check(text.count('\n') <= LONGEST_FILE, f'{path}: {text.count(chr(10))} lines; is it one idea?')
    too_long = [f'{start} ({length} lines)' for start, length in function_lengths(text) if length > LONGEST_FUNCTION]
    check(not too_long, f'{path}: functions over {LONGEST_FUNCTION} lines at {", ".join(too_long)}')


def check_words(path, text):
    check(not re.search(r'\b(TO' r'DO|FIX' r'ME|XX' r'X)\b', text), f'{path}: something is left to do')


def check_translatable(path, text, listed):
    speaks = re.search(r'\b(_|N_|C_|ngettext|g_dngettext) ?\("', text)
    check(not speaks or str(path.relative_to(root)) in listed, f'{path} speaks to people but po/POTFILES does not list it: '
          'sh po/update-potfiles.sh')


def package_flags():
    # The desktop's headers only; enough for every header of ours.
    return subprocess.run(['pkg-config', '--cflags', 'gtk4', 'libadwaita-1', 'json-glib-1.0', 'libxml-2.0'],
                          capture_output=True, text=True, check=True).stdout.split()


def check_headers(headers):
    flags = package_flags()

    def compile_alone(header):
        return subprocess.run([*compiler, '-fsyntax-only', '-x', 'c', '-std=gnu17', f'-I{source}', *flags, str(header)],
                              capture_output=True, text=True)

    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        for header, done in zip(headers, pool.map(compile_alone, headers)):
            check(done.returncode == 0, f'{header} does not stand alone:\n{done.stderr}')


# What leaves the window: the sheets, the reports and lists, and what the command line tells. The window itself may lag behind and speaks English there.
SPEAKS_OUTSIDE = ('drawing', 'figures', 'command', 'document')
KEYWORDS = ['_', 'N_', 'C_:1c,2', 'ngettext:1,2', 'g_dngettext:2,3', 'g_dpgettext2:2c,3']


def tool(*words, given=None):
    return subprocess.run(words, input=given, capture_output=True, text=True, cwd=root)


def check_translations(listed):
    outside = [path for path in listed if path.startswith(tuple(f'src/{room}/' for room in SPEAKS_OUTSIDE))]
    messages = tool('xgettext', '--from-code=UTF-8', '--output=-', *(f'--keyword={word}' for word in KEYWORDS), *outside).stdout
    for language in (root / 'po' / 'LINGUAS').read_text(encoding='utf-8').split('\n'):
        if not language or language.startswith('#'):
            continue
        file = f'po/{language}.po'
        done = tool('msgfmt', '-c', '-o', '/dev/null', file)
        check(done.returncode == 0, f'{file} is no translation:\n{done.stderr}')
        fuzzy = tool('msgattrib', '--only-fuzzy', '--no-obsolete', file).stdout
        check(not fuzzy, f'{file} has messages whose English changed; look at them and take the mark away:\n{fuzzy}')
        left = tool('msgcmp', file, '-', given=messages)
        check(left.returncode == 0, f'{file} lacks messages of sheets, reports or the command line: ninja -C build trammel-update-po, '
              f'then translate them:\n{left.stderr}')


def main():
    listed = (root / 'po' / 'POTFILES').read_text(encoding='utf-8').split()
    for path in sorted(source.rglob('*.[ch]')):
        if path.parent == source:
            continue
        text = path.read_text(encoding='utf-8')
        check_includes(path, text)
        check_size(path, text)
        check_words(path, text)
        check_translatable(path, text, listed)
    check_translations(listed)
    check_headers(sorted(source.glob('*/*.h')))
    for complaint in complaints:
        print(complaint, file=sys.stderr)
    print(f'{100 * (checks - len(complaints)) // max(checks, 1)}%: Checks: {checks}, Failures: {len(complaints)}, Errors: 0')
    sys.exit(1 if complaints else 0)


main()
