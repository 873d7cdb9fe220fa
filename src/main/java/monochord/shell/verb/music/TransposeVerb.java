package monochord.shell.verb.music;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.clauseOrAlone;
import static monochord.shell.sentence.FormPart.fixed;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.or;
import static monochord.shell.sentence.FormPart.orAgain;
import static monochord.shell.sentence.FormPart.takes;
import static monochord.shell.sentence.FormPart.unsaid;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import monochord.harmony.Capo;
import monochord.harmony.Instrument;
import monochord.harmony.Progression;
import monochord.harmony.Transposition;
import monochord.harmony.melody.Melody;
import monochord.harmony.singing.SingersKey;
import monochord.harmony.singing.SingersKeys;
import monochord.harmony.singing.VocalRange;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.RemarkedAnswer;
import monochord.view.music.CapoAnswer;
import monochord.view.music.SingersKeyAnswer;
import monochord.view.music.TransposeAnswer;

/** Moves a progression to another key, onto an instrument's part, or above a capo. */
final class TransposeVerb implements Verb {
    private static final String SING = "sing";
    private static final int HALF_AN_OCTAVE = 6;
    private static final String WITH = "with";
    private static final String EXAMPLE = "transpose F C G from C to Eb";

    @Override
    public String word() {
        return "transpose";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.EXPLORING,
                        Phrase.of("move chords to a key, a part, or above a capo; find keys for a singer"))
                .form(
                        takes(Value.PROGRESSION),
                        may(clause("from", Value.KEY)),
                        unsaid(clause("in", Value.KEY)),
                        clause("to", Value.KEY),
                        or(),
                        clause("for", Value.INSTRUMENT),
                        or(),
                        clauseOrAlone("capo", Value.FRET),
                        orAgain(),
                        takes(Value.MELODY),
                        fixed("to"),
                        clause(SING, Value.RANGE),
                        or(),
                        fixed("for " + Value.VOICE),
                        may(clause(WITH, Value.INSTRUMENT)))
                .examples(
                        EXAMPLE,
                        "transpose F C G Ab in C for alto sax",
                        "transpose Bb F Gm in Bb capo 3",
                        "transpose Bb F Gm in Bb capo",
                        "transpose G4:2 A4 B4 D5:2 B4:2 from G to sing A3 to D5 with trumpet");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Key from = sentence.clause("from")
                .or(() -> sentence.clause("in"))
                .map(part -> part.read(Key::parse))
                .orElseGet(sitting::key);
        Optional<Answer> sung = sung(sentence, from, sitting);
        if (sung.isPresent()) {
            return sung.get();
        }
        Progression progression = sentence.body().read(text -> Progression.parse(text, from));
        Answer moved = destination(sentence, progression);
        Optional<Key> to = sentence.clause("to").map(part -> part.read(Key::parse));
        return to.isPresent() && sitting.song().isWhole() ? new RemarkedAnswer(moved, there(to.get(), 0)) : moved;
    }

    /** How the open song is put into a key, so many half steps away. */
    private static Phrase there(Key key, int up) {
        String way = up > HALF_AN_OCTAVE ? " up" : up <= -HALF_AN_OCTAVE ? " down" : "";
        return Phrase.sentence("{0} puts the song there.", Phrase.verb("change key to " + key.tonic() + way));
    }

    /** The keys for a singer, where one is meant: a low and a high note, or the name of a voice. */
    private static Optional<Answer> sung(Sentence sentence, Key from, Sitting sitting) {
        Optional<Sentence.SentencePart> range = sentence.clause(SING);
        Optional<Sentence.SentencePart> voice = sentence.clause("for")
                .filter(part -> VocalRange.named(part.text()).isPresent())
                .filter(part -> !part.text().equalsIgnoreCase("bass")
                        || sentence.body().text().indexOf(':') >= 0);
        if (range.isEmpty() && voice.isEmpty()) {
            return Optional.empty();
        }
        Melody melody = sentence.body().read(Melody::parse);
        VocalRange sings = range.map(part -> part.read(VocalRange::parse))
                .orElseGet(() -> VocalRange.named(voice.get().text()).orElseThrow());
        List<String> players = sentence.clause(WITH).map(TransposeVerb::players).orElse(List.of());
        List<SingersKey> keys = SingersKeys.of(melody, from, sings, players);
        Answer answer = new SingersKeyAnswer(
                keys, sings, range.isPresent() ? "" : voice.get().text());
        boolean moves = sitting.song().isWhole() && keys.get(0).up().semitones() != 0;
        return Optional.of(
                moves
                        ? new RemarkedAnswer(
                                answer,
                                there(keys.get(0).key(), keys.get(0).up().semitones()))
                        : answer);
    }

    /** Their names, parted by commas or {@code and}. */
    private static List<String> players(Sentence.SentencePart named) {
        return named.read(text -> {
            List<String> players = List.of(text.split("\\s*,\\s*|\\s+and\\s+"));
            players.stream()
                    .filter(name -> !name.toLowerCase(Locale.ROOT).contains("guitar"))
                    .forEach(Instrument::parse);
            return players;
        });
    }

    private static Answer destination(Sentence sentence, Progression progression) {
        Key from = progression.key();
        if (sentence.clause("to").isPresent()) {
            Key to = sentence.clause("to").get().read(Key::parse);
            return new TransposeAnswer(progression, progression.in(to), Phrase.NOTHING);
        }
        if (sentence.clause("for").isPresent()) {
            Instrument instrument = sentence.clause("for").get().read(Instrument::parse);
            Key written = Transposition.written(from, instrument);
            return new TransposeAnswer(
                    progression, progression.in(written), Phrase.of("written for {0}", instrument.title()));
        }
        if (sentence.clause("capo").filter(Sentence.SentencePart::isEmpty).isPresent()) {
            return new CapoAnswer(progression, Capo.forSounding(progression));
        }
        if (sentence.clause("capo").isPresent()) {
            int fret = sentence.clause("capo").get().read(TransposeVerb::fret);
            Key shapes = Transposition.shapes(from, fret);
            return new TransposeAnswer(
                    progression, progression.in(shapes), Phrase.of("shapes above a capo on fret {0}", fret));
        }
        throw Unreadable.because(
                sentence.whole(), sentence.whole().length(), "a transposition", "expected to, for or capo", EXAMPLE);
    }

    private static int fret(String text) {
        if (!text.matches("[0-9]{1,2}") || Integer.parseInt(text) > Transposition.HIGHEST_FRET) {
            throw Unreadable.because(
                    text,
                    0,
                    "a fret",
                    Clause.of("expected a number from 0 to {0}", Transposition.HIGHEST_FRET),
                    "capo 3");
        }
        return Integer.parseInt(text);
    }
}
