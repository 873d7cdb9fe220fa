package monochord.shell.verb.music;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.oneOf;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.takes;
import static monochord.shell.sentence.FormPart.unsaid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.harmony.voicing.Explanation;
import monochord.harmony.voicing.Reach;
import monochord.harmony.voicing.Unvoiced;
import monochord.harmony.voicing.VoicedProgression;
import monochord.harmony.voicing.Voicing;
import monochord.harmony.voicing.VoicingSearch;
import monochord.harmony.voicing.VoicingStyle;
import monochord.harmony.voicing.VoicingTask;
import monochord.score.Arrangement;
import monochord.score.HeldChord;
import monochord.score.TimedVoicing;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.SentenceKey;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.shell.sitting.Take;
import monochord.shell.verb.sounding.Recording;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.music.VoiceAnswer;

/** Finds the voicing of a progression that moves best under two hands. */
final class VoiceVerb implements Verb {
    private static final String EXAMPLE = "voice IV I V bVI V I in C spread";
    private static final int WAYS = 3;

    @Override
    public String word() {
        return "voice";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.Topic.EXPLORING,
                        Phrase.of("find the voicing for two hands that moves best, and say why"))
                .form(
                        takes(Value.PROGRESSION),
                        may(clause("in", Value.KEY)),
                        may(oneOf("close", "spread", "shell", "choir")),
                        may(clause("reach", Value.WHITE_KEYS)),
                        may(clause("melody", Value.TUNE)))
                .form(Recording.form())
                .form(unsaid(option("keys")))
                .examples(
                        EXAMPLE,
                        "voice F C Gsus4 Abmaj7 Gsus4 C in C spread reach 10",
                        "voice Dm7 G7 C in C melody A4:2 B4:2 G4:2 --keys");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Key key = SentenceKey.of(sentence, sitting);
        Progression progression = sentence.body().read(text -> Progression.parse(text, key));
        VoicingTask task = task(sentence, progression);
        List<VoicedProgression> ways = search(sentence, task);
        remember(ways.get(0), progression, sitting);
        return Recording.besides(new VoiceAnswer(ways, sentence.has("keys")), sentence, sitting);
    }

    private static VoicingTask task(Sentence sentence, Progression progression) {
        VoicingStyle style = style(sentence);
        Reach reach =
                sentence.clause("reach").map(part -> part.read(Reach::parse)).orElse(Reach.OCTAVE);
        return sentence.clause("melody")
                .map(part -> part.read(Melody::parse))
                .map(tune -> VoicingTask.of(progression, style, tune))
                .orElseGet(() -> VoicingTask.of(progression, style))
                .within(reach);
    }

    private static VoicingStyle style(Sentence sentence) {
        List<VoicingStyle> named = new ArrayList<>();
        for (VoicingStyle style : VoicingStyle.values()) {
            Optional<Sentence.Part> clause = sentence.clause(style.toString());
            clause.ifPresent(part -> named.add(style));
            if (clause.isPresent() && (named.size() > 1 || !clause.get().isEmpty())) {
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
        return Arrays.stream(VoicingStyle.values()).map(VoicingStyle::toString).toList();
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
        Take voiced = take(progression, best.voicings());
        Take plain = take(progression, Explanation.of(best).plain());
        Take improved = voiced.titled(
                Phrase.of("{0} voiced {1}", voiced.title(), best.task().style().inWords()));
        sitting.stage().remember(improved, plain.titled(Phrase.of("{0} in root position", plain.title())), improved);
    }

    private static Take take(Progression progression, List<Voicing> voicings) {
        List<HeldChord> changes = Arrangement.changes(progression);
        List<TimedVoicing> timed = IntStream.range(0, changes.size())
                .mapToObj(i -> new TimedVoicing(
                        voicings.get(i), changes.get(i).beats(), changes.get(i).label()))
                .toList();
        return Take.of(progression, timed);
    }
}
