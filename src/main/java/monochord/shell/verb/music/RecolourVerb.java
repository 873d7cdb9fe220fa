package monochord.shell.verb.music;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.oneOf;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.orAgain;
import static monochord.shell.sentence.FormPart.takes;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import monochord.harmony.Music;
import monochord.harmony.Progression;
import monochord.harmony.colour.AskedIdiom;
import monochord.harmony.colour.Idea;
import monochord.harmony.colour.Recolour;
import monochord.harmony.melody.Melody;
import monochord.shell.playback.Playable;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.SentenceKey;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.PlaybackState;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.sounding.PlaybackOptions;
import monochord.shell.verb.sounding.Recording;
import monochord.song.musicxml.LeadSheet;
import monochord.song.musicxml.SheetFault;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Statement;
import monochord.view.advice.AskedIdeaAnswer;
import monochord.view.advice.RecolourAnswer;

/** Proposes where a progression could take a colour. */
final class RecolourVerb implements Verb {
    private static final int BEATS_IN_THREE = 3;
    private static final String WITH_EXAMPLE = "recolour C F G C in C with borrowed iv at 2";

    @Override
    public String word() {
        return "recolour";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.EXPLORING,
                        Phrase.of("propose where a progression could take a colour, and why"))
                .form(
                        takes(Value.PROGRESSION),
                        may(clause("in", Value.KEY)),
                        may(clause("under", Value.MELODY)),
                        may(clause(PlaybackOptions.METRE, Value.METRE)),
                        may(clause("with", Value.IDIOM), may(clause("at", Value.NUMBER))),
                        may(oneOf("more", "bold")),
                        may(oneOf("loop", "open")),
                        orAgain(),
                        option(TuneAndChords.FILE, Value.LEADSHEET))
                .form(Recording.form())
                .examples(
                        "recolour IV I V vi V I in C",
                        "recolour C G Am F in C more",
                        WITH_EXAMPLE,
                        "recolour F C G Am in C under A4:2 G4 B4 C5");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        try {
            Answer answer = sentence.has(TuneAndChords.FILE) ? ofFile(sentence, sitting) : ofText(sentence, sitting);
            return Recording.besides(answer, sentence, sitting);
        } catch (SheetFault fault) {
            return Statement.failed(fault.phrase());
        }
    }

    private static Answer ofText(Sentence sentence, Sitting sitting) {
        Key key = SentenceKey.of(sentence, sitting);
        Progression progression = sentence.body().read(text -> Progression.parse(text, key));
        return answer(progression, melody(sentence), List.of(), sentence, sitting);
    }

    private static Optional<Melody> melody(Sentence sentence) {
        Optional<Melody> melody = sentence.clause("under").map(part -> part.read(Melody::parse));
        return melody.map(tune -> sentence.clause(PlaybackOptions.METRE)
                .map(part -> part.read(text -> TuneAndChords.inBars(tune, text)))
                .orElse(tune));
    }

    /** The share of a bar that falls into three, where a metre is said. */
    private static Optional<Beats> threes(Sentence sentence) {
        return sentence.clause(PlaybackOptions.METRE)
                .map(part -> PlaybackOptions.metre(sentence))
                .map(metre -> metre.isCompound()
                        ? Beats.of(
                                metre.counted().numerator() * metre.bar().denominator(),
                                metre.counted().denominator() * metre.bar().numerator())
                        : metre.hasQuarters(BEATS_IN_THREE) ? Beats.ONE : Beats.ZERO);
    }

    private static Answer ofFile(Sentence sentence, Sitting sitting) throws SheetFault {
        LeadSheet sheet =
                TuneAndChords.sheet(sentence.option(TuneAndChords.FILE).orElseThrow(), sitting);
        Optional<Melody> melody = melody(sentence).or(sheet::tune);
        return answer(sheet.progression(), melody, TuneAndChords.remarks(sheet), sentence, sitting);
    }

    private static Answer answer(
            Progression progression,
            Optional<Melody> melody,
            List<Phrase> remarks,
            Sentence sentence,
            Sitting sitting) {
        Recolour.RecolourOptions manner = new Recolour.RecolourOptions(
                isSaid("bold", sentence), isSaid("loop", sentence), isSaid("open", sentence), threes(sentence));
        if (sentence.clause("with").isPresent()) {
            return asked(progression, melody, manner, sentence, sitting);
        }
        sentence.clause("at").ifPresent(at -> {
            throw Unreadable.because(
                    sentence.whole(),
                    at.place(),
                    "a sentence",
                    "at says where an idiom goes that is named behind with",
                    WITH_EXAMPLE);
        });
        Recolour recolour = Recolour.of(progression, melody, manner);
        boolean isMore = isSaid("more", sentence) || manner.isBold();
        Progression changed = isMore
                ? recolour.best()
                : recolour.change().map(Idea::progression).orElse(progression);
        remember(progression, changed, melody, sentence, sitting.stage());
        return ProposedChanges.besides(new RecolourAnswer(recolour, isMore, remarks), recolour, sitting.song());
    }

    private static Answer asked(
            Progression progression,
            Optional<Melody> melody,
            Recolour.RecolourOptions manner,
            Sentence sentence,
            Sitting sitting) {
        AskedIdiom idiom = sentence.clause("with").orElseThrow().read(AskedIdiom::parse);
        int chords = progression.chords().size();
        OptionalInt at = sentence.clause("at")
                .map(part -> OptionalInt.of(part.read(text -> place(text, chords))))
                .orElse(OptionalInt.empty());
        Optional<Idea> idea = idiom.in(progression, melody, at, manner);
        if (idea.isEmpty()) {
            return Statement.no(idiom.refused(progression, melody, at));
        }
        remember(progression, idea.get().progression(), melody, sentence, sitting.stage());
        return ProposedChanges.besides(new AskedIdeaAnswer(idea.get()), idea.get(), sitting.song());
    }

    private static int place(String text, int chords) {
        boolean isNumber = text.matches("\\d{1,4}");
        int number = isNumber ? Integer.parseInt(text) : 0;
        if (number < 1 || number > chords) {
            throw Unreadable.because(
                    text,
                    0,
                    "a place in the row",
                    Clause.of("the chords are counted from 1 to {0}", chords),
                    WITH_EXAMPLE);
        }
        return number - 1;
    }

    private static boolean isSaid(String word, Sentence sentence) {
        Optional<Sentence.SentencePart> said = sentence.clause(word);
        if (said.isPresent() && !said.get().isEmpty()) {
            throw Unreadable.because(
                    sentence.whole(),
                    said.get().place(),
                    "a sentence",
                    Clause.of("{0} stands alone", word),
                    "recolour C G Am F in C more");
        }
        return said.isPresent();
    }

    private static void remember(
            Progression plain, Progression changed, Optional<Melody> melody, Sentence sentence, PlaybackState stage) {
        Playable now = take(changed, melody, sentence);
        if (changed.equals(plain)) {
            stage.remember(now);
        } else {
            stage.remember(now, take(plain, melody, sentence), now);
        }
    }

    private static Playable take(Progression progression, Optional<Melody> melody, Sentence sentence) {
        return melody.map(tune -> Playable.of(tune, Optional.of(progression), progression.key()))
                .orElseGet(() -> Playable.of(
                        new Music.OneProgression(progression), progression.key(), PlaybackOptions.metre(sentence)));
    }
}
