package monochord.harmony.motion;

import java.util.List;
import java.util.Optional;
import monochord.harmony.motion.Finding.FindingKind;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.note.Pitch;

/** Puts the moving of voices into sentences. */
public final class MotionExplanation {
    /** From so many voices on, a list of all pairs is no longer read. */
    private static final int MOST_VOICES_IN_PAIRS = 4;

    private final VoiceNames names;
    private final Passage passage;
    private final List<MotionStep> steps;

    public MotionExplanation(Passage passage, Strictness strictness) {
        this.passage = passage;
        this.steps = passage.steps();
        this.names = new VoiceNames(strictness);
    }

    /** What a voice is called in a list: {@code tenor}, or {@code second} of more than four. */
    public Phrase name(int voice, int voices) {
        return names.brief(voice, voices);
    }

    /** Which voices, which notes: a sentence. */
    public Phrase of(Finding finding) {
        return switch (finding.kind()) {
            case PARALLEL_UNISONS -> between(Phrase.of("Parallel unisons"), finding);
            case PARALLEL_FIFTHS -> between(Phrase.of("Parallel fifths"), finding);
            case PARALLEL_OCTAVES -> between(Phrase.of("Parallel octaves"), finding);
            case CONTRARY_FIFTHS -> between(Phrase.of("Fifths by contrary motion"), finding);
            case CONTRARY_OCTAVES -> between(Phrase.of("Octaves by contrary motion"), finding);
            case DIRECT_FIFTHS -> direct(MusicWords.oneNumber(5), finding);
            case DIRECT_OCTAVES -> direct(MusicWords.oneNumber(8), finding);
            case UNEQUAL_FIFTHS -> between(Phrase.of("A diminished fifth opens into a perfect one"), finding);
            case CROSSING -> crossing(finding);
            case OVERLAP -> overlap(finding);
            case AUGMENTED_STEP -> augmented(finding);
            case BLOCK -> block(finding);
        };
    }

    private Phrase between(Phrase what, Finding finding) {
        return Phrase.sentence(
                "{0} between {1} and {2}: {3}.", what, name(finding, 0), name(finding, 1), notes(finding));
    }

    private Phrase direct(Phrase interval, Finding finding) {
        Phrase top = name(finding, 1);
        Phrase bass = name(finding, 0);
        Phrase notes = notes(finding);
        return move(finding, 1).direction() > 0
                ? Phrase.sentence(
                        "The {0} leaps up into {1} with the {2}, which goes the same way: {3}.",
                        top, interval, bass, notes)
                : Phrase.sentence(
                        "The {0} leaps down into {1} with the {2}, which goes the same way: {3}.",
                        top, interval, bass, notes);
    }

    /** {@code C3 G3 to D3 A3}: the two voices before and after. */
    private Phrase notes(Finding finding) {
        VoiceMove lower = move(finding, 0);
        VoiceMove upper = move(finding, 1);
        return Phrase.of("{0} {1} to {2} {3}", lower.from(), upper.from(), lower.to(), upper.to());
    }

    private Phrase crossing(Finding finding) {
        List<Pitch> chord = passage.chords().get(finding.at());
        int lower = finding.voices().get(0);
        return Phrase.sentence(
                "The {0} crosses the {1}: {2} lies above {3}.",
                names.of(lower, chord.size()),
                names.of(lower + 1, chord.size()),
                chord.get(lower),
                chord.get(lower + 1));
    }

    private Phrase overlap(Finding finding) {
        VoiceMove lower = move(finding, 0);
        VoiceMove upper = move(finding, 1);
        return lower.to().midiNumber() > upper.from().midiNumber()
                ? Phrase.sentence(
                        "The {0} goes to {1}, above the {2} that the {3} had before.",
                        name(finding, 0), lower.to(), upper.from(), name(finding, 1))
                : Phrase.sentence(
                        "The {0} goes to {1}, below the {2} that the {3} had before.",
                        name(finding, 1), upper.to(), lower.from(), name(finding, 0));
    }

    private Phrase augmented(Finding finding) {
        VoiceMove move = move(finding, 0);
        return Phrase.sentence(
                "The {0} goes {1}: {2} to {3}, awkward to sing.",
                name(finding, 0), Phrase.one(move.interval().size()), move.from(), move.to());
    }

    private Phrase block(Finding finding) {
        MotionStep step = step(finding);
        boolean up = move(finding, 0).direction() > 0;
        if (finding.voices().size() == step.moves().size()) {
            Phrase count = Phrase.number(step.moves().size());
            return up
                    ? Phrase.sentence("All {0} voices go up together as one block: a colour, but a flat one.", count)
                    : Phrase.sentence("All {0} voices go down together as one block: a colour, but a flat one.", count);
        }
        Phrase voices = Phrase.list(finding.voices().stream()
                .map(voice -> names.of(voice, step.voices()))
                .toList());
        return up
                ? Phrase.sentence("{0} go up together as one block: a colour, but a flat one.", voices)
                : Phrase.sentence("{0} go down together as one block: a colour, but a flat one.", voices);
    }

    /** What could be held or turned instead, if there is something. */
    public Optional<Phrase> instead(Finding finding) {
        boolean helped = finding.kind() != FindingKind.CROSSING && finding.kind() != FindingKind.AUGMENTED_STEP;
        return helped ? Remedy.of(step(finding)).map(MotionExplanation::remedy) : Optional.empty();
    }

    private static Phrase remedy(Remedy remedy) {
        if (remedy instanceof Remedy.Hold hold) {
            return Phrase.sentence(
                    "Both chords have {0}: leave {1} where it is and move the others to their nearest notes.",
                    hold.pitch().name(), hold.pitch());
        } else if (remedy instanceof Remedy.Suspend suspend) {
            return suspended(suspend);
        }
        return ((Remedy.AgainstBass) remedy).bassGoesUp()
                ? Phrase.sentence("The bass goes up: take the others down to their nearest notes.")
                : Phrase.sentence("The bass goes down: take the others up to their nearest notes.");
    }

    private static Phrase suspended(Remedy.Suspend suspend) {
        return suspend.first()
                ? Phrase.sentence(
                        "Play {0} first: its {1} belongs to the next chord too and can stay.",
                        suspend.suspended(), suspend.tone())
                : Phrase.sentence(
                        "Let {0} hang over as the fourth of {1}, and let it fall a step afterwards.",
                        suspend.tone(), suspend.suspended());
    }

    /** Who moves how: {@code Contrary: bass–tenor. Still: alto–soprano.} */
    public Phrase motions(MotionStep step) {
        if (step.voices() > MOST_VOICES_IN_PAIRS) {
            return step.outer()
                    .map(pair -> motion(pair.motion(), List.of(pair), step))
                    .orElse(Phrase.NOTHING);
        }
        Phrase all = Phrase.NOTHING;
        for (Motion motion : Motion.values()) {
            List<VoicePair> pairs = step.pairs().stream()
                    .filter(pair -> pair.motion() == motion)
                    .toList();
            all = pairs.isEmpty() ? all : all.then(motion(motion, pairs, step));
        }
        return all;
    }

    private Phrase motion(Motion motion, List<VoicePair> pairs, MotionStep step) {
        Phrase who =
                Phrase.joined(", ", pairs.stream().map(pair -> pair(pair, step)).toList());
        return switch (motion) {
            case CONTRARY -> Phrase.sentence("Contrary: {0}.", who);
            case OBLIQUE -> Phrase.sentence("Oblique: {0}.", who);
            case SIMILAR -> Phrase.sentence("Similar: {0}.", who);
            case PARALLEL -> Phrase.sentence("Parallel: {0}.", who);
            case STILL -> Phrase.sentence("Still: {0}.", who);
        };
    }

    private Phrase pair(VoicePair pair, MotionStep step) {
        return Phrase.joined(
                "–",
                List.of(
                        names.brief(pair.lower().voice(), step.voices()),
                        names.brief(pair.upper().voice(), step.voices())));
    }

    /** What one voice does: {@code Bass: C3 down 3 half steps to A2.} */
    public Phrase voice(VoiceMove move, MotionStep step) {
        Phrase name = names.of(move.voice(), step.voices());
        Phrase size = MusicWords.halfSteps(Math.abs(move.semitones()));
        return move.isStill()
                ? Phrase.sentence("{0}: {1} held.", name, move.from())
                : move.direction() > 0
                        ? Phrase.sentence("{0}: {1} up {2} to {3}.", name, move.from(), size, move.to())
                        : Phrase.sentence("{0}: {1} down {2} to {3}.", name, move.from(), size, move.to());
    }

    /** In all: {@code 5 half steps in all, E4 and C5 kept.} */
    public Phrase sum(MotionStep step) {
        return Phrase.sentence(
                "{0} in all, {1}{2}{3}.",
                MusicWords.halfSteps(step.moved()),
                common(step),
                step.entering().isEmpty() ? Phrase.NOTHING : Phrase.of("; {0} new", Phrase.list(step.entering())),
                step.ending().isEmpty() ? Phrase.NOTHING : Phrase.of("; {0} let go", Phrase.list(step.ending())));
    }

    private static Phrase common(MotionStep step) {
        return !step.kept().isEmpty()
                ? Phrase.of("{0} kept", Phrase.list(step.kept()))
                : step.shared().isEmpty()
                        ? Phrase.of("no note in common")
                        : Phrase.of("{0} in common but not kept", Phrase.list(step.shared()));
    }

    private MotionStep step(Finding finding) {
        return steps.get(Math.max(0, finding.at() - 1));
    }

    private VoiceMove move(Finding finding, int index) {
        int voice = finding.voices().get(index);
        return step(finding).moves().stream()
                .filter(move -> move.voice() == voice)
                .findFirst()
                .orElseThrow();
    }

    private Phrase name(Finding finding, int index) {
        return names.of(finding.voices().get(index), step(finding).voices());
    }
}
