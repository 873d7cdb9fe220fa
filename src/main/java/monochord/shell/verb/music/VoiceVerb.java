package monochord.shell.verb.music;

import static monochord.shell.sentence.FormPart.alone;
import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.fixed;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.oneOf;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.takes;
import static monochord.shell.sentence.FormPart.unsaid;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.harmony.voicing.Reach;
import monochord.harmony.voicing.RootPositionComparison;
import monochord.harmony.voicing.Unvoiced;
import monochord.harmony.voicing.VoicedProgression;
import monochord.harmony.voicing.Voicing;
import monochord.harmony.voicing.VoicingSearch;
import monochord.harmony.voicing.VoicingStyle;
import monochord.harmony.voicing.VoicingTask;
import monochord.score.Arrangement;
import monochord.score.HeldChord;
import monochord.score.TimedVoicing;
import monochord.shell.playback.Playable;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.SentenceKey;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.paper.StaffFile;
import monochord.shell.verb.sounding.Recording;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.music.VoiceAnswer;
import monochord.view.staff.MusicOnStaff;

/** Finds the voicing of a progression that moves best under two hands. */
final class VoiceVerb implements Verb {
    private static final String ON_STAVES = "voice IV I V bVI V I in C spread staff --svg hands.svg";
    private static final String EXAMPLE = "voice IV I V bVI V I in C spread";
    /** Another way to write {@code drop 2}, read and not shown. */
    private static final String JOINED = "drop-2";

    private static final int WAYS = 3;

    /**
     * How a style is asked for: a small word, and what has to stand behind it.
     *
     * @param needed the words of which one stands behind; none where nothing does
     * @param besides words that may stand there too
     */
    private record StyleWord(VoicingStyle style, String word, List<String> needed, List<String> besides) {
        static StyleWord of(VoicingStyle style) {
            return new StyleWord(style, style.toString(), List.of(), List.of());
        }

        boolean isAsked(String behind) {
            List<String> words = behind.isEmpty()
                    ? List.of()
                    : List.of(behind.toLowerCase(Locale.ROOT).split(" "));
            return words.stream().allMatch(one -> needed.contains(one) || besides.contains(one))
                    && (needed.isEmpty() || words.stream().anyMatch(needed::contains));
        }

        String typed() {
            return needed.isEmpty() ? word : word + " " + needed.get(0);
        }
    }

    private static final List<StyleWord> STYLES = List.of(
            StyleWord.of(VoicingStyle.CLOSE),
            StyleWord.of(VoicingStyle.SPREAD),
            StyleWord.of(VoicingStyle.SHELL),
            StyleWord.of(VoicingStyle.CHOIR),
            StyleWord.of(VoicingStyle.ALONE),
            new StyleWord(VoicingStyle.WITH_BASS, "with", List.of("bass"), List.of("a", "player")),
            new StyleWord(VoicingStyle.UNDER_TUNE, "under", List.of("tune"), List.of("a")),
            new StyleWord(VoicingStyle.DROP_TWO, "drop", List.of("2", "two"), List.of()),
            new StyleWord(VoicingStyle.DROP_TWO, JOINED, List.of(), List.of()));

    @Override
    public String word() {
        return "voice";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.EXPLORING,
                        Phrase.of("find the voicing for two hands that moves best, and say why"))
                .form(
                        takes(Value.PROGRESSION),
                        may(clause("in", Value.KEY)),
                        may(oneOf("close", "spread", "shell", "choir", "alone")),
                        may(alone("with"), fixed("bass")),
                        may(alone("under"), fixed("tune")),
                        may(alone("drop"), fixed("2")),
                        may(oneOf("five", "six")),
                        may(clause("reach", Value.WHITE_KEYS)),
                        may(clause("melody", Value.TUNE)))
                .form(Recording.form())
                .form(StaffFile.form())
                .form(unsaid(alone(JOINED), option("keys")))
                .examples(
                        EXAMPLE,
                        "voice Dm7 G7alt Cmaj7 in C with bass",
                        "voice F C Gsus4 Abmaj7 Gsus4 C in C spread reach 10",
                        "voice Dm7 G7 C in C melody A4:2 B4:2 G4:2 --keys",
                        ON_STAVES);
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Key key = SentenceKey.of(sentence, sitting);
        Progression progression = sentence.body().read(text -> Progression.parse(text, key));
        VoicingTask task = task(sentence, progression);
        List<VoicedProgression> ways = search(sentence, task);
        remember(ways.get(0), progression, sitting);
        Optional<Answer> onStaves = StaffFile.asked(
                sentence,
                sitting,
                () -> MusicOnStaff.voiced(progression, ways.get(0).voicings()),
                ON_STAVES);
        if (onStaves.isPresent()) {
            return onStaves.get();
        }
        return Recording.besides(new VoiceAnswer(ways, sentence.has("keys")), sentence, sitting);
    }

    private static VoicingTask task(Sentence sentence, Progression progression) {
        VoicingStyle style = style(sentence);
        Reach reach =
                sentence.clause("reach").map(part -> part.read(Reach::parse)).orElse(Reach.OCTAVE);
        VoicingTask task = sentence.clause("melody")
                .map(part -> part.read(Melody::parse))
                .map(tune -> VoicingTask.of(progression, style, tune))
                .orElseGet(() -> VoicingTask.of(progression, style))
                .within(reach);
        OptionalInt voices = voices(sentence, style);
        return voices.isPresent() ? task.ofVoices(voices.getAsInt()) : task;
    }

    private static VoicingStyle style(Sentence sentence) {
        List<VoicingStyle> named = new ArrayList<>();
        for (StyleWord one : STYLES) {
            Optional<Sentence.SentencePart> clause = sentence.clause(one.word());
            clause.ifPresent(part -> named.add(one.style()));
            if (clause.isPresent()
                    && (named.size() > 1 || !one.isAsked(clause.get().text()))) {
                throw Unreadable.because(
                        sentence.whole(),
                        clause.get().place(),
                        "a sentence",
                        Clause.of("one style stands alone: {0}", String.join(", ", styles())),
                        EXAMPLE);
            }
        }
        return named.isEmpty() ? VoicingStyle.CLOSE : named.get(0);
    }

    private static List<String> styles() {
        return STYLES.stream()
                .filter(one -> !one.word().equals(JOINED))
                .map(StyleWord::typed)
                .toList();
    }

    /** Five or six, if the style has room for so many. */
    private static OptionalInt voices(Sentence sentence, VoicingStyle style) {
        OptionalInt asked = OptionalInt.empty();
        for (String word : List.of("five", "six")) {
            Optional<Sentence.SentencePart> clause = sentence.clause(word);
            int count = word.equals("five") ? 5 : 6;
            if (clause.isPresent() && (asked.isPresent() || !clause.get().isEmpty() || count > style.most())) {
                throw Unreadable.because(
                        sentence.whole(),
                        clause.get().place(),
                        "a sentence",
                        Clause.of("{0} notes at most here, and one number", style.most()),
                        EXAMPLE);
            }
            asked = clause.isPresent() ? OptionalInt.of(count) : asked;
        }
        return asked;
    }

    private static List<VoicedProgression> search(Sentence sentence, VoicingTask task) {
        try {
            return VoicingSearch.best(task, WAYS);
        } catch (Unvoiced unvoiced) {
            throw Unreadable.because(
                    sentence.whole(),
                    0,
                    "a task for two hands",
                    Clause.of("{0}", unvoiced.said()),
                    "voice F C G in C shell");
        }
    }

    private static void remember(VoicedProgression best, Progression progression, Sitting sitting) {
        Playable voiced = take(progression, best.voicings());
        Playable plain = take(progression, RootPositionComparison.of(best).plain());
        Playable improved = voiced.titled(
                Phrase.of("{0} voiced {1}", voiced.title(), best.task().style().inWords()));
        sitting.stage().remember(improved, plain.titled(Phrase.of("{0} in root position", plain.title())), improved);
    }

    private static Playable take(Progression progression, List<Voicing> voicings) {
        List<HeldChord> changes = Arrangement.changes(progression);
        List<TimedVoicing> timed = IntStream.range(0, changes.size())
                .mapToObj(i -> new TimedVoicing(
                        voicings.get(i), changes.get(i).beats(), changes.get(i).label()))
                .toList();
        return Playable.of(progression, timed);
    }
}
