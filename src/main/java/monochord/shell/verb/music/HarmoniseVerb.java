package monochord.shell.verb.music;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.orAgain;
import static monochord.shell.sentence.FormPart.takes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.harmony.Progression;
import monochord.harmony.key.KeyFinding;
import monochord.harmony.melody.Melody;
import monochord.harmony.tune.CarryingChord;
import monochord.harmony.tune.HarmonicMetre;
import monochord.harmony.tune.Harmonisation;
import monochord.score.BarGrid;
import monochord.shell.playback.Playable;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.SentenceKey;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.sounding.Recording;
import monochord.song.musicxml.LeadSheet;
import monochord.song.musicxml.SheetFault;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Statement;
import monochord.view.advice.CarryingAnswer;
import monochord.view.advice.HarmoniseAnswer;

/** Puts chords under a bare tune, or lists the chords that carry one note. */
final class HarmoniseVerb implements Verb {
    private static final String UNDER = "under";
    private static final String METRE = "metre";
    private static final String EXAMPLE = "harmonise E4 D4 C4 D4 | E4 E4 E4:2 in C";
    private static final int MOST_BARS = 1000;
    /** Below this share the key of a tune is in doubt. */
    private static final double LIKELY = 0.6;

    @Override
    public String word() {
        return "harmonise";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.EXPLORING,
                        Phrase.of("put plain chords under a tune, or list chords that carry a note"))
                .form(
                        takes(Value.MELODY),
                        may(clause("in", Value.KEY)),
                        may(clause(METRE, Value.METRE)),
                        orAgain(),
                        may(takes(Value.CHORDS)),
                        clause(UNDER, Value.NOTE),
                        may(clause("in", Value.KEY)),
                        orAgain(),
                        option(TuneAndChords.FILE, Value.LEADSHEET))
                .form(Recording.form())
                .examples(EXAMPLE, "harmonise F C under A in C", "harmonise under Ab in C");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        if (sentence.clause(UNDER).isPresent()) {
            return carrying(sentence, sitting);
        }
        try {
            Answer answer = sentence.has(TuneAndChords.FILE) ? ofFile(sentence, sitting) : ofText(sentence, sitting);
            return Recording.besides(answer, sentence, sitting);
        } catch (SheetFault fault) {
            return Statement.failed(fault.phrase());
        }
    }

    private static Answer ofText(Sentence sentence, Sitting sitting) {
        Melody melody = sentence.body().read(Melody::parse);
        Optional<Key> named = sentence.clause("in").map(part -> part.read(Key::parse));
        List<Phrase> remarks = new ArrayList<>();
        named.flatMap(key -> KeyRemark.of(melody, key)).ifPresent(remarks::add);
        Key key = named.orElseGet(() -> found(melody, sitting.key(), remarks));
        return answer(melody, key, metre(sentence, melody), remarks, sitting);
    }

    /** The key of the tune itself; in doubt the one we are in, if it is among the likeliest. */
    private static Key found(Melody melody, Key here, List<Phrase> remarks) {
        KeyFinding finding = KeyFinding.of(melody, Counts.KEYS);
        boolean inDoubt = finding.keys().get(0).share() < LIKELY;
        boolean mayBeHere =
                finding.keys().stream().anyMatch(likely -> likely.key().equals(here));
        Key key = inDoubt && mayBeHere ? here : finding.key();
        remarks.add(
                inDoubt
                        ? Phrase.sentence("The key is in doubt; {0} is taken. Say another with in.", key)
                        : Phrase.sentence("{0} was found from the tune.", key));
        return key;
    }

    private static Answer ofFile(Sentence sentence, Sitting sitting) throws SheetFault {
        LeadSheet sheet =
                TuneAndChords.sheet(sentence.option(TuneAndChords.FILE).orElseThrow(), sitting);
        Melody melody = TuneAndChords.melody(sheet, sentence);
        Key key = sentence.clause("in").map(part -> part.read(Key::parse)).orElseGet(() -> keyOf(melody, sheet));
        return answer(melody, key, metre(sentence, melody), TuneAndChords.remarks(sheet), sitting);
    }

    /** What the signature of a sheet leaves open is heard from the tune. */
    private static Key keyOf(Melody melody, LeadSheet sheet) {
        Key heard = KeyFinding.of(melody, Counts.KEYS).key();
        return heard.signature() == sheet.key().signature() ? heard : sheet.key();
    }

    private static HarmonicMetre metre(Sentence sentence, Melody melody) {
        HarmonicMetre metre = saidOrShown(sentence, melody);
        if (metre.bars(melody) > MOST_BARS) {
            throw Unreadable.because(
                    sentence.whole(),
                    0,
                    "a tune to harmonise",
                    Clause.of("at most {0} bars get chords at once", MOST_BARS),
                    EXAMPLE);
        }
        return metre;
    }

    private static HarmonicMetre saidOrShown(Sentence sentence, Melody melody) {
        Optional<Sentence.SentencePart> said = sentence.clause(METRE);
        if (said.isEmpty()) {
            return HarmonicMetre.of(melody);
        }
        return said.get().read(text -> {
            BarGrid.parse(text);
            HarmonicMetre metre = HarmonicMetre.parse(text);
            if (!metre.suits(melody)) {
                throw TuneAndChords.otherBars(melody, metre.bar(), text);
            }
            return metre;
        });
    }

    private static Answer answer(Melody tune, Key key, HarmonicMetre metre, List<Phrase> remarks, Sitting sitting) {
        Melody melody = new Melody(tune.notes(), tune.beats(), Optional.of(metre.bar()), tune.pickup());
        Harmonisation harmonisation = Harmonisation.of(melody, key, metre, Counts.KEYS.chords());
        sitting.stage().remember(Playable.of(melody, Optional.of(harmonisation.progression()), key));
        return new HarmoniseAnswer(harmonisation, remarks);
    }

    private static Answer carrying(Sentence sentence, Sitting sitting) {
        Key key = SentenceKey.of(sentence, sitting);
        NoteName note = sentence.clause(UNDER).orElseThrow().read(HarmoniseVerb::note);
        List<Chord> around = sentence.body().read(text -> around(text, key));
        Optional<Chord> before = around.stream().findFirst();
        Optional<Chord> goal = around.stream().skip(1).findFirst();
        return new CarryingAnswer(
                note,
                key,
                before,
                goal,
                CarryingChord.of(note, before.orElse(null), goal.orElse(null), key, Counts.KEYS.chords()));
    }

    private static NoteName note(String text) {
        boolean octave = !text.isEmpty() && Character.isDigit(text.charAt(text.length() - 1));
        return octave ? Pitch.parse(text).name() : NoteName.parse(text);
    }

    /** Nothing, the chord before, or the chords before and behind. */
    private static List<Chord> around(String text, Key key) {
        if (text.isEmpty()) {
            return List.of();
        }
        List<Chord> chords = Progression.parse(text, key).chords();
        if (chords.size() > 2) {
            throw Unreadable.because(
                    text,
                    0,
                    "one chord or two",
                    "at most the chord before and the chord behind are read",
                    "harmonise F C under A in C");
        }
        return chords;
    }
}
