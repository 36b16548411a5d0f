#!/usr/bin/env python3
"""`trammel trace` keeps its contract: what it prints of a plan whose lines are known, as JSON for programs and as text."""
import json
import math
import os
import pathlib
import subprocess
import sys
import tempfile

import drawn_plan

program = str(pathlib.Path(sys.argv[1]).resolve())
checks, complaints = 0, []


def check(good, complaint):
    global checks
    checks += 1
    if not good:
        complaints.append(complaint)


def near(value, wanted, tolerance, what):
    check(value is not None and abs(value - wanted) <= tolerance, f'{what}: {value}, wanted {wanted}')


def trace(*words, **environment):
    done = subprocess.run([program, 'trace', plan, *words], capture_output=True, text=True, env={**os.environ, **environment}, timeout=120)
    check(done.returncode == 0, f'{words}: {done.stderr}')
    return done.stdout


def traced(*words):
    return json.loads(trace(*words, '--json'))


BAR = ['--through', '20,41', '120,38', '219,40']
WING = ['--through', '21,81', '100,79', '178,82', '179,108', '100,116', '21,119']
CENTRE_LINE = '--centre-line=20,60,20,140'


def a_length_gives_the_scale_and_x_runs_down_from_the_first_place():
    bar = traced('--known=20,40,220,40=50', *BAR)
    near(bar['mm_per_px_x'], 0.25, 1e-9, 'a pixel across')
    near(bar['mm_per_px_y'], 0.25, 1e-9, 'a pixel down')
    check(bar['segments'][0]['kind'] == 'start' and set(bar['segments'][0]) == {'kind', 'x', 'y'}, f'start: {bar["segments"][0]}')
    check(all(abs(x + 0.25) < 0.05 for x, y in bar['polyline_mm']), 'the bar lies one pixel above the first place')
    ends = sorted(y for x, y in bar['polyline_mm'])
    near(ends[0], 0, 0.2, 'where the first place is named, the bar begins')
    near(ends[-1], 49.75, 0.2, 'the bar\'s end')
    check(bar['area_mm2'] is None and '--centre-line' in bar['missing_because'], 'no area without a centre line, and why')


def a_scale_that_is_known_one_way_only_says_so():
    one, across = '--known=20,40,220,40=50', '--known=20,40,20,100=15'
    text = trace(one, *BAR, LC_ALL='C.UTF-8')
    check('one way only' in text and 'half a per cent' in text, f'one length: {text}')
    check(traced(one, *BAR)['scale_known_one_way'], 'one length')
    check(not traced(one, across, *BAR)['scale_known_one_way'], 'two lengths across each other')
    check('one way only' not in trace(one, across, *BAR, LC_ALL='C.UTF-8'), 'two lengths: no word of it')
    check(not traced('--mm-per-pixel=0.25', *BAR)['scale_known_one_way'], 'a scale that was typed')


def two_lengths_give_a_scale_each_way():
    bar = traced('--known=20,40,220,40=50', '--known=20,40,20,100=30', *BAR)
    near(bar['mm_per_px_x'], 0.25, 1e-9, 'a pixel across')
    near(bar['mm_per_px_y'], 0.5, 1e-9, 'a pixel down')
    check(bar['scale_each_way'], 'a scale each way')


def corners_give_the_mapping_in_either_sense():
    one = traced('--corners', '20,80', '180,80', '180,110', '20,110=40x7.5', CENTRE_LINE, *WING)
    other = traced('--corners', '20,110', '180,110', '180,80', '20,80=40x7.5', CENTRE_LINE, *WING)
    near(one['mm_per_px_x'], 0.25, 1e-9, 'a pixel across at the rectangle\'s middle')
    near(one['area_mm2'], other['area_mm2'], 1e-6, 'the other sense')
    near(one['area_mm2'], 2 * 40 * 8.75, 7, 'the area')


def a_half_wing_comes_out_about_its_centre_line():
    wing = traced('--mm-per-pixel=0.25', CENTRE_LINE, *WING)
    near(wing['half_area_mm2'], 40 * (10 + 7.5) / 2, 3.5, 'half the area')
    near(wing['area_mm2'], 2 * wing['half_area_mm2'], 1e-6, 'both halves')
    near(wing['span_mm'], 80, 0.3, 'the span')
    near(wing['root_chord_mm'], 10, 0.1, 'the root chord')
    first, last = wing['segments'][0], wing['segments'][-1]
    check(first['y'] == 0 and last['y'] == 0, 'both ends are carried to the centre line')
    near(first['x'], 5, 0.1, 'aft of the centre line\'s forward end')
    check(all(y > -1e-9 for x, y in wing['polyline_mm']), 'y is positive on the side traced')
    backward = traced('--mm-per-pixel=0.25', CENTRE_LINE, '--through', *WING[:0:-1])
    near(backward['segments'][0]['x'], first['x'], 0.02, 'clicked trailing edge first, it is turned round')


def a_plan_drawn_the_other_way_up_has_positive_y_too():
    wing = traced('--mm-per-pixel=0.25', '--centre-line=20,140,20,60', *WING)
    near(max(y for x, y in wing['polyline_mm']), 40, 0.2, 'positive on the side traced')
    near(wing['segments'][0]['x'], 5, 0.1, 'aft of the forward end at the bottom')


def segments_have_the_document_s_attributes_and_the_polylines_are_dense():
    wing = traced('--mm-per-pixel=0.25', CENTRE_LINE, *WING)
    attributes = {'start': {'x', 'y'}, 'line': {'x', 'y'}, 'curve': {'x', 'y', 'x1', 'y1', 'x2', 'y2'},
                  'arc': {'x', 'y', 'cx', 'cy', 'rx', 'ry'}}
    for segment in wing['segments']:
        check(set(segment) == {'kind'} | attributes[segment['kind']], f'attributes: {segment}')
    check([s['kind'] for s in wing['segments']].count('start') == 1, 'one start')
    mm, px = wing['polyline_mm'], wing['polyline_px']
    check(len(mm) == len(px) > 100, 'both polylines have the same places')
    check(all(math.dist(a, b) <= 0.5 for a, b in zip(mm, mm[1:])), 'at most half a millimetre apart')
    for (x, y), (across, down) in zip(mm, px):
        check(math.dist((across, down), (20 + y / 0.25, 60 + x / 0.25)) < 1e-6, f'({x}, {y}) mm is not at ({across}, {down})')


def a_pixel_list_may_come_before_other_options_and_in_parts():
    near(traced(*WING[:4], '--through', *WING[4:], '--mm-per-pixel', '0.25', CENTRE_LINE)['span_mm'], 80, 0.3, 'in two parts')


def the_text_tells_what_disagrees_with_a_point_for_its_decimals():
    text = trace('--known=20,40,220,40=50', '--known=20,42,220,42=54', *BAR, LC_ALL='C.UTF-8')
    check('explain' in text and text.count('The known 5') == 2 and 'figure or an end is wrong' in text, f'misfit: {text}')
    check('Pixel\'s width' in text and 'start' in text, f'scale and segments: {text}')
    check('mm²' not in text and text.count('add --centre-line') == 1, 'no area without a centre line, and why')
    text = trace('--mm-per-pixel=0.25', CENTRE_LINE, *WING, LC_ALL='C.UTF-8')
    check('mm²' in text and '--centre-line' not in text, 'area with one')
    check('missing_because' not in traced('--mm-per-pixel=0.25', CENTRE_LINE, *WING), 'nothing is missing with one')


def a_line_with_large_gaps_is_said_to_have_them_before_all_else():
    text = trace('--mm-per-pixel=0.25', '--through', '20,40', '100,40', '219,40', '219,150', LC_ALL='C.UTF-8')
    check(text.startswith('Look at this first') and text.count('no line is to be seen') == 1, f'gaps: {text}')
    check(not trace('--mm-per-pixel=0.25', *BAR, LC_ALL='C.UTF-8').startswith('Look'), 'a whole line')


def a_place_that_is_passed_by_far_is_said_before_all_else():
    far = [*WING[:2], '60,74', *WING[3:]]
    text = trace('--mm-per-pixel=0.25', CENTRE_LINE, *far, LC_ALL='C.UTF-8')
    wing = traced('--mm-per-pixel=0.25', CENTRE_LINE, *far)
    check(text.startswith('Look at this first') and 'x 3.5 mm, y 10.0 mm by 1.5 mm' in text, f'passed: {text}')
    near(wing['passed_mm'], 1.5, 0.2, 'by how much')
    near(wing['passed_at_mm'][1], 10, 0.2, 'at which station')
    right = traced('--mm-per-pixel=0.25', CENTRE_LINE, *WING)
    check(right['passed_mm'] == 0 and 'passed_at_mm' not in right, 'no place is passed')
    check(right['aside_mm'] == 0 and 'aside_at_mm' not in right, 'nor does it go aside')


def a_line_that_goes_aside_over_bare_paper_is_said_before_all_else():
    drawn_plan.write(plan, drawn_plan.BROKEN_BAR)
    words = ['--mm-per-pixel=0.25', '--through', '20,40', '219,53']
    text, bar = trace(*words, LC_ALL='C.UTF-8'), traced(*words)
    check(text.startswith('Look at this first') and 'goes aside at x ' in text and 'mm by 3.' in text, f'aside: {text}')
    near(bar['aside_mm'], 3.25, 0.2, 'by how much')
    near(bar['aside_at_mm'][1], 23.75, 2, 'at which station')


with tempfile.TemporaryDirectory() as folder:
    plan = str(pathlib.Path(folder, 'plan.png'))
    drawn_plan.write(plan)
    a_length_gives_the_scale_and_x_runs_down_from_the_first_place()
    a_scale_that_is_known_one_way_only_says_so()
    two_lengths_give_a_scale_each_way()
    corners_give_the_mapping_in_either_sense()
    a_half_wing_comes_out_about_its_centre_line()
    a_plan_drawn_the_other_way_up_has_positive_y_too()
    segments_have_the_document_s_attributes_and_the_polylines_are_dense()
    a_pixel_list_may_come_before_other_options_and_in_parts()
    the_text_tells_what_disagrees_with_a_point_for_its_decimals()
    a_line_with_large_gaps_is_said_to_have_them_before_all_else()
    a_place_that_is_passed_by_far_is_said_before_all_else()
    a_line_that_goes_aside_over_bare_paper_is_said_before_all_else()
for complaint in complaints[:30]:
    print(complaint)
print(f'{100 * (checks - len(complaints)) // checks}%: Checks: {checks}, Failures: {len(complaints)}, Errors: 0')
sys.exit(1 if complaints else 0)
