package monochord.harmony.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import monochord.harmony.motion.Finding.Kind;
import monochord.theory.NoteName;
import monochord.theory.Pitch;
import monochord.theory.Signs;

/** Puts the moving of voices into sentences, with the signs of printed music. */
public final class Telling {
    /** From so many voices on, a list of all pairs is no longer read. */
    private static final int MOST_VOICES_IN_PAIRS = 4;

    private final VoiceNames names;
    private final Passage passage;
    private final List<Step> steps;

    public Telling(Passage passage, Strictness strictness) {
        this.passage = passage;
        this.steps = passage.steps();
        this.names = new VoiceNames(strictness);
    }

    /** What a voice is called in a list: {@code tenor}, or {@code second} of more than four. */
    public String name(int voice, int voices) {
        return names.brief(voice, voices);
    }

    /** Which voices, which notes. */
    public String of(Finding finding) {
        return switch (finding.kind()) {
            case PARALLEL_UNISONS -> run("Parallel unisons", finding);
            case PARALLEL_FIFTHS -> run("Parallel fifths", finding);
            case PARALLEL_OCTAVES -> run("Parallel octaves", finding);
            case CONTRARY_FIFTHS -> run("Fifths by contrary motion", finding);
            case CONTRARY_OCTAVES -> run("Octaves by contrary motion", finding);
            case DIRECT_FIFTHS -> direct("a fifth", finding);
            case DIRECT_OCTAVES -> direct("an octave", finding);
            case UNEQUAL_FIFTHS -> run("A diminished fifth opens into a perfect one", finding);
            case CROSSING -> crossing(finding);
            case OVERLAP -> overlap(finding);
            case AUGMENTED_STEP -> augmented(finding);
            case BLOCK -> block(finding);
        };
    }

    private String run(String what, Finding finding) {
        Move lower = move(finding, 0);
        Move upper = move(finding, 1);
        return what + " between " + both(finding) + ": " + sign(lower.from()) + " " + sign(upper.from()) + " to "
                + sign(lower.to()) + " " + sign(upper.to()) + ".";
    }

    private String direct(String interval, Finding finding) {
        Move lower = move(finding, 0);
        Move upper = move(finding, 1);
        return "The " + name(finding, 1) + " leaps " + way(upper) + " into " + interval + " with the "
                + name(finding, 0) + ", which goes the same way: " + sign(lower.from()) + " " + sign(upper.from())
                + " to " + sign(lower.to()) + " " + sign(upper.to()) + ".";
    }

    private String crossing(Finding finding) {
        List<Pitch> chord = passage.chords().get(finding.at());
        int lower = finding.voices().get(0);
        return "The " + names.of(lower, chord.size()) + " crosses the " + names.of(lower + 1, chord.size()) + ": "
                + sign(chord.get(lower)) + " lies above " + sign(chord.get(lower + 1)) + ".";
    }

    private String overlap(Finding finding) {
        Move lower = move(finding, 0);
        Move upper = move(finding, 1);
        boolean rises = lower.to().midiNumber() > upper.from().midiNumber();
        return rises
                ? passes(name(finding, 0), lower, "above", name(finding, 1), upper)
                : passes(name(finding, 1), upper, "below", name(finding, 0), lower);
    }

    private static String passes(String name, Move move, String side, String neighbour, Move left) {
        return "The " + name + " goes to " + sign(move.to()) + ", " + side + " the " + sign(left.from()) + " that the "
                + neighbour + " had before.";
    }

    private String augmented(Finding finding) {
        Move move = move(finding, 0);
        return "The " + name(finding, 0) + " goes an " + move.interval().inWords() + ": " + sign(move.from()) + " to "
                + sign(move.to()) + ", awkward to sing.";
    }

    private String block(Finding finding) {
        Step step = step(finding);
        int sounding = step.moves().size();
        Move first = move(finding, 0);
        String who = finding.voices().size() == sounding
                ? "All " + VoiceNames.count(sounding) + " voices"
                : capital(listed(finding.voices().stream()
                        .map(voice -> names.of(voice, step.voices()))
                        .toList()));
        return who + " go " + way(first) + " together as one block: a colour, but a flat one.";
    }

    /** What could be held or turned instead, if there is something. */
    public Optional<String> instead(Finding finding) {
        boolean helped = finding.kind() != Kind.CROSSING && finding.kind() != Kind.AUGMENTED_STEP;
        return helped ? Remedy.of(step(finding)).map(Telling::remedy) : Optional.empty();
    }

    static String remedy(Remedy remedy) {
        if (remedy instanceof Remedy.Hold hold) {
            return "Both chords have " + sign(hold.pitch().name()) + ": leave " + sign(hold.pitch())
                    + " where it is and move the others to their nearest notes.";
        } else if (remedy instanceof Remedy.Suspend suspend) {
            return suspended(suspend);
        }
        return ((Remedy.AgainstBass) remedy).bassGoesUp()
                ? "The bass goes up: take the others down to their nearest notes."
                : "The bass goes down: take the others up to their nearest notes.";
    }

    private static String suspended(Remedy.Suspend suspend) {
        String tone = sign(suspend.tone());
        String chord = suspend.suspended().write(Signs.MUSIC);
        return suspend.first()
                ? "Play " + chord + " first: its " + tone + " belongs to the next chord too and can stay."
                : "Let " + tone + " hang over as the fourth of " + chord + ", and let it fall a step afterwards.";
    }

    /** Who moves how: {@code Contrary: bass and tenor. Still: alto and soprano.} */
    public String motions(Step step) {
        return step.voices() > MOST_VOICES_IN_PAIRS ? ofOuter(step) : ofAll(step);
    }

    private String ofOuter(Step step) {
        return step.outer()
                .map(pair -> capital(pair.motion().toString()) + ": " + pair(pair, step) + ".")
                .orElse("");
    }

    private String ofAll(Step step) {
        List<String> sentences = new ArrayList<>();
        for (Motion motion : Motion.values()) {
            List<String> pairs = step.pairs().stream()
                    .filter(pair -> pair.motion() == motion)
                    .map(pair -> pair(pair, step))
                    .toList();
            if (!pairs.isEmpty()) {
                sentences.add(capital(motion.toString()) + ": " + String.join(", ", pairs) + ".");
            }
        }
        return String.join(" ", sentences);
    }

    private String pair(Pair pair, Step step) {
        return names.brief(pair.lower().voice(), step.voices()) + "–"
                + names.brief(pair.upper().voice(), step.voices());
    }

    /** What one voice does: {@code Bass: C3 down 3 half steps to A2.} */
    public String voice(Move move, Step step) {
        String name = capital(names.of(move.voice(), step.voices())) + ": ";
        return move.isStill()
                ? name + sign(move.from()) + " held."
                : name + sign(move.from()) + " " + way(move) + " " + halfSteps(move.semitones()) + " to "
                        + sign(move.to()) + ".";
    }

    /** In all: {@code 5 half steps in all, E4 and C5 kept.} */
    public String sum(Step step) {
        List<String> kept = step.kept().stream().map(Telling::sign).toList();
        List<String> shared = step.shared().stream().map(Telling::sign).toList();
        String common = !kept.isEmpty()
                ? listed(kept) + " kept"
                : shared.isEmpty() ? "no note in common" : listed(shared) + " in common but not kept";
        return halfSteps(step.moved()) + " in all, " + common + fullness(step) + ".";
    }

    private static String fullness(Step step) {
        List<Pitch> entering = step.entering();
        List<Pitch> ending = step.ending();
        return (entering.isEmpty() ? "" : "; " + listed(signs(entering)) + " new")
                + (ending.isEmpty() ? "" : "; " + listed(signs(ending)) + " let go");
    }

    private static List<String> signs(List<Pitch> pitches) {
        return pitches.stream().map(Telling::sign).toList();
    }

    private static String halfSteps(int count) {
        int size = Math.abs(count);
        return size == 1 ? "1 half step" : size + " half steps";
    }

    private static String way(Move move) {
        return move.direction() > 0 ? "up" : "down";
    }

    private Step step(Finding finding) {
        return steps.get(Math.max(0, finding.at() - 1));
    }

    private Move move(Finding finding, int index) {
        int voice = finding.voices().get(index);
        return step(finding).moves().stream()
                .filter(move -> move.voice() == voice)
                .findFirst()
                .orElseThrow();
    }

    private String name(Finding finding, int index) {
        return names.of(finding.voices().get(index), step(finding).voices());
    }

    private String both(Finding finding) {
        return name(finding, 0) + " and " + name(finding, 1);
    }

    private static String sign(Pitch pitch) {
        return pitch.write(Signs.MUSIC);
    }

    private static String sign(NoteName name) {
        return name.write(Signs.MUSIC);
    }

    static String listed(List<String> words) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : words.subList(0, last).stream().collect(Collectors.joining(", ")) + " and " + words.get(last);
    }

    static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
