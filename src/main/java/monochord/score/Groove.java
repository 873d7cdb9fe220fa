package monochord.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import monochord.harmony.bass.WalkingBass;
import monochord.theory.Chord;
import monochord.theory.note.Beats;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.theory.note.Unreadable;

/**
 * Chords in a rhythm of two hands that goes on from chord to chord, as {@link Rhythm} writes it down. Where a chord begins
 * there is always its bass; a chord that no stroke falls on is struck where it begins. Common practice, no source.
 */
final class Groove {
    private static final Beats EIGHTH = Beats.of(1, 2);
    private static final Beats PUSHED = Beats.of(5, 4);
    private static final Pitch LOWEST = Pitch.parse("E1");
    /** From here on the fifth of a bass lies below it. */
    private static final Pitch HIGH_BASS = Pitch.parse("A2");

    private final Pattern pattern;
    private final Rhythm rhythm;
    private final List<TimedVoicing> voicings;
    private final BarGrid metre;
    private final List<Beats> starts = new ArrayList<>();

    /** Keys that go down together. */
    private record HandEvent(Beats at, Beats length, List<Pitch> keys) {
        /** At most until then. */
        static HandEvent until(Beats end, Beats at, Beats length, List<Pitch> keys) {
            Beats room = end.minus(at);
            return new HandEvent(at, length.compareTo(room) < 0 ? length : room, keys);
        }
    }

    Groove(Pattern pattern, List<TimedVoicing> voicings, BarGrid metre) {
        this.pattern = pattern;
        this.rhythm = Rhythm.of(pattern, metre);
        this.voicings = voicings;
        this.metre = metre;
        Beats now = Beats.ZERO;
        for (TimedVoicing voicing : voicings) {
            starts.add(now);
            now = now.plus(voicing.beats());
        }
        starts.add(now);
    }

    static boolean isMade(Pattern pattern) {
        return pattern.ordinal() >= Pattern.WALTZ.ordinal();
    }

    Score score() {
        Score low = line(left()).by(Hand.LEFT);
        Score inner = line(chords(true)).by(Hand.LEFT);
        Score high = line(chords(false)).by(Hand.RIGHT);
        return new Score.Together(List.of(labels(), low, inner, high));
    }

    private Score labels() {
        List<Score> parts = new ArrayList<>();
        for (TimedVoicing voicing : voicings) {
            Score under = Score.rest(voicing.beats());
            Score labelled = voicing.label().isEmpty() ? under : under.labelled(voicing.label());
            parts.add(pattern.isPedalled() ? labelled.pedalled() : labelled);
        }
        return new Score.InTurn(parts);
    }

    private List<HandEvent> left() {
        return switch (pattern) {
            case WALKING -> walking();
            case BALLAD -> ballad();
            default -> bass();
        };
    }

    private List<HandEvent> bass() {
        List<HandEvent> events = new ArrayList<>();
        for (int i = 0; i < voicings.size(); i++) {
            Optional<Pitch> bass = lowest(i);
            if (bass.isPresent()) {
                events.add(new HandEvent(starts.get(i), voicings.get(i).beats(), List.of(bass.get())));
                for (Rhythm.RhythmStroke stroke : rhythm.left().within(anchor(i), starts.get(i), starts.get(i + 1))) {
                    Pitch key = stroke.isFifth() ? fifth(i, bass.get()) : bass.get();
                    events.add(new HandEvent(stroke.at(), stroke.length(), List.of(key)));
                }
            }
        }
        return events;
    }

    /** From where the rhythm is counted: the bar in which the chord begins, or the beginning. */
    private Beats anchor(int i) {
        Beats start = starts.get(i);
        return rhythm.beginsWithChord() ? start.minus(metre.within(start)) : Beats.ZERO;
    }

    private Optional<Pitch> lowest(int i) {
        List<Pitch> left = voicings.get(i).hands().left();
        return left.isEmpty() ? Optional.empty() : Optional.of(left.get(0));
    }

    /** What goes with the bass: the fifth above it if the chord has one, else its root. */
    private Pitch fifth(int i, Pitch bass) {
        List<NoteName> tones = tones(voicings.get(i));
        NoteName other = Stream.of(Interval.PERFECT_FIFTH, Interval.DIMINISHED_FIFTH, Interval.AUGMENTED_FIFTH)
                .map(bass.name()::plus)
                .filter(tones::contains)
                .findFirst()
                .orElse(tones.get(0));
        Pitch above = Pitch.atOrAbove(other, bass);
        boolean below = bass.compareTo(HIGH_BASS) >= 0;
        return below ? above.minus(Interval.OCTAVE) : above;
    }

    /** The tones of the chord it stands for, else those that are held, each once. */
    private static List<NoteName> tones(TimedVoicing voicing) {
        try {
            return Chord.parse(voicing.label()).tones();
        } catch (Unreadable unnamed) {
            Set<NoteName> held = new LinkedHashSet<>();
            voicing.hands().pitches().forEach(pitch -> held.add(pitch.name()));
            return List.copyOf(held);
        }
    }

    private List<HandEvent> walking() {
        List<WalkingBass.Stretch> stretches = new ArrayList<>();
        List<HandEvent> events = new ArrayList<>();
        int first = 0;
        while (first < voicings.size() && lowest(first).isEmpty()) {
            first++;
        }
        for (int i = first; i < voicings.size() && lowest(i).isPresent(); i++) {
            stretches.add(new WalkingBass.Stretch(
                    lowest(i).get().name(),
                    tones(voicings.get(i)),
                    voicings.get(i).beats()));
        }
        List<List<WalkingBass.WalkedNote>> line = WalkingBass.under(stretches);
        for (int i = 0; i < line.size(); i++) {
            Beats now = starts.get(first + i);
            for (WalkingBass.WalkedNote note : line.get(i)) {
                events.add(new HandEvent(now, note.beats(), List.of(note.pitch())));
                now = now.plus(note.beats());
            }
        }
        return events;
    }

    private List<HandEvent> ballad() {
        List<HandEvent> events = new ArrayList<>();
        for (int i = 0; i < voicings.size(); i++) {
            List<Pitch> open = open(i);
            for (Beats now = starts.get(i); !open.isEmpty() && now.compareTo(starts.get(i + 1)) < 0; ) {
                Pitch key = open.get(place(now, starts.get(i), open.size()));
                events.add(new HandEvent(now, EIGHTH, List.of(key)));
                now = now.plus(EIGHTH);
            }
        }
        return events;
    }

    /** The bass first in a bar and in a chord, in threes in each beat; then the fifth and the octave in turn. */
    private int place(Beats now, Beats start, int keys) {
        Beats within = metre.within(now);
        long eighth = within.times(2).numerator() / within.times(2).denominator();
        if (now.equals(start) || within.isZero()) {
            return 0;
        }
        long step = metre.isCompound() ? eighth % 3 : 1 + (eighth + 1) % 2;
        return (int) Math.min(step, keys - 1L);
    }

    /** What the left hand holds, or root, fifth and octave below the right hand. */
    private List<Pitch> open(int i) {
        List<Pitch> left = voicings.get(i).hands().left();
        if (left.size() != 1) {
            return left;
        }
        List<Pitch> right = voicings.get(i).hands().right();
        Pitch bass = left.get(0);
        boolean isHigh = !right.isEmpty() && bass.plus(Interval.OCTAVE).compareTo(right.get(0)) >= 0;
        boolean hasRoom = bass.minus(Interval.OCTAVE).compareTo(LOWEST) >= 0;
        Pitch low = isHigh && hasRoom ? bass.minus(Interval.OCTAVE) : bass;
        Pitch fifth = Pitch.atOrAbove(fifth(i, low).name(), low);
        return Stream.of(low, fifth, low.plus(Interval.OCTAVE))
                .filter(key -> right.isEmpty() || key.compareTo(right.get(0)) < 0)
                .toList();
    }

    /** The chord strokes, of the right hand or of what the left holds above its bass. */
    private List<HandEvent> chords(boolean inLeft) {
        List<HandEvent> events = new ArrayList<>();
        for (int i = 0; i < voicings.size(); i++) {
            List<Pitch> keys = keys(i, inLeft);
            int before = events.size();
            Beats from = begins(i);
            Beats end = begins(i + 1);
            if (pattern == Pattern.PUSH) {
                events.add(HandEvent.until(end, from, PUSHED, keys));
            }
            for (Rhythm.RhythmStroke stroke : rhythm.right().within(anchor(i), starts.get(i), end)) {
                events.add(HandEvent.until(end, stroke.at(), stroke.length(), keys));
            }
            if (events.size() == before) {
                events.add(HandEvent.until(end, from, Beats.ONE, keys));
            }
        }
        return events;
    }

    private List<Pitch> keys(int i, boolean inLeft) {
        List<Pitch> left = voicings.get(i).hands().left();
        List<Pitch> inner = left.size() > 1 && pattern != Pattern.BALLAD ? left.subList(1, left.size()) : List.of();
        return inLeft ? inner : voicings.get(i).hands().right();
    }

    /** Where a chord comes: at its beginning, or before it where it is pushed and there is room. */
    private Beats begins(int i) {
        boolean pushed = pattern == Pattern.PUSH
                && i > 0
                && i < voicings.size()
                && voicings.get(i - 1).beats().compareTo(Beats.ONE) >= 0;
        return pushed ? starts.get(i).minus(EIGHTH) : starts.get(i);
    }

    /** One after another, each over where the next begins; of two at a time the one that was named last. */
    private Score line(List<HandEvent> events) {
        List<HandEvent> inOrder = new ArrayList<>(events);
        inOrder.sort(Comparator.comparing(HandEvent::at));
        List<Score> parts = new ArrayList<>();
        Beats now = Beats.ZERO;
        for (int i = 0; i < inOrder.size(); i++) {
            HandEvent event = inOrder.get(i);
            Beats next = i + 1 < inOrder.size() ? inOrder.get(i + 1).at() : starts.get(voicings.size());
            if (event.keys().isEmpty() || event.at().compareTo(now) < 0 || next.equals(event.at())) {
                continue;
            }
            rest(event.at().minus(now), parts);
            Beats room = next.minus(event.at());
            Beats length = event.length().compareTo(room) < 0 ? event.length() : room;
            parts.add(Score.together(event.keys(), length));
            now = event.at().plus(length);
        }
        rest(starts.get(voicings.size()).minus(now), parts);
        return new Score.InTurn(parts);
    }

    private static void rest(Beats beats, List<Score> parts) {
        if (!beats.isZero()) {
            parts.add(Score.rest(beats));
        }
    }
}
