package monochord.shell.verb.song;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.fixed;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.orAgain;
import static monochord.shell.sentence.FormPart.takes;

import java.util.List;
import java.util.stream.Collectors;
import monochord.harmony.Bar;
import monochord.harmony.Progression;
import monochord.harmony.colour.Idea;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.OpenSong;
import monochord.shell.sitting.Sitting;
import monochord.song.Song;
import monochord.song.SongPlace;
import monochord.text.Phrase;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.music.SongAnswer;

/** Changes chords of the open song, by hand or as was just proposed. */
final class ChangeVerb implements Verb {
    private static final String TO = "to";
    private static final String WHY = "because";
    private static final String KEY = "key";
    private static final String EXAMPLE = "change verse bar 3 to Bb";

    @Override
    public String word() {
        return "change";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.WRITING,
                        Phrase.of("change chords of the open song; with a number, as was just proposed"))
                .form(
                        takes(Value.PLACE),
                        clause(TO, Value.CHORDS),
                        may(clause(WHY, Value.TEXT)),
                        orAgain(),
                        takes(Value.NUMBER),
                        orAgain(),
                        fixed(KEY),
                        clause(TO, Value.KEY))
                .examples(EXAMPLE, "change 1", "change key to F");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        OpenSong desk = sitting.song();
        if (desk.song().isEmpty()) {
            return SongVerb.none(sitting);
        }
        Song song = desk.song().get();
        String body = sentence.body().text();
        if (body.equalsIgnoreCase(KEY)) {
            return KeyChange.of(sentence, TO, WHY, sitting);
        }
        Song changed = sentence.clause(TO).isEmpty() && body.matches("\\d{1,3}")
                ? proposed(Integer.parseInt(body), sentence, desk)
                : byHand(sentence, song);
        if (changed == song) {
            return SongAnswer.SongStatement.of(
                    song, Phrase.sentence("That is how it stands already; nothing is changed."));
        }
        return changed(changed, sitting);
    }

    /** The song stands so from now on. */
    static Answer changed(Song changed, Sitting sitting) {
        sitting.song().change(changed);
        Phrase last =
                Phrase.typed(changed.changes().get(changed.changes().size() - 1).toString());
        return SongAnswer.SongStatement.of(
                changed,
                Phrase.of("Changed: {0}", last),
                SongKeeping.save(sitting),
                Phrase.sentence("Agree it with the band first; {0} takes it back.", Phrase.verb("undo")));
    }

    private static Song proposed(int number, Sentence sentence, OpenSong desk) {
        List<Idea> ideas = desk.ideas();
        if (number < 1 || number > ideas.size() || desk.proposedFor().isEmpty()) {
            throw Unreadable.because(
                    sentence.whole(),
                    0,
                    "a change",
                    ideas.isEmpty()
                            ? Clause.of("nothing was just proposed for the song")
                            : Clause.of("the changes proposed are counted from 1 to {0}", ideas.size()),
                    "recolour verse");
        }
        Idea idea = ideas.get(number - 1);
        String why = idea.reasons().stream().map(Phrase::toString).collect(Collectors.joining(" "));
        return desk.song().orElseThrow().changed(desk.proposedFor().get(), idea.progression(), why);
    }

    private static Song byHand(Sentence sentence, Song song) {
        SongPlace place = sentence.body().read(text -> place(text, song));
        Sentence.SentencePart to = sentence.clause(TO)
                .filter(part -> !part.isEmpty())
                .orElseThrow(() -> Unreadable.because(
                        sentence.whole(), sentence.whole().length(), "a change", "expected to and chords", EXAMPLE));
        Progression chords = to.read(text -> Progression.parse(text, song.head().key()));
        int bars =
                place.progression(song).map(Progression::bars).orElse(List.of()).size();
        if (bars == 0) {
            throw Unreadable.because(sentence.whole(), 0, "a change", "no chords are written there", EXAMPLE);
        }
        String why = sentence.clause(WHY).map(Sentence.SentencePart::text).orElse("");
        return song.changed(place, inBars(chords, bars, to), why);
    }

    private static SongPlace place(String text, Song song) {
        return SongPlace.find(text, song)
                .filter(found -> found.end() == text.length())
                .map(SongPlace.Found::place)
                .orElseThrow(() ->
                        Unreadable.because(text, 0, "a place in the song", SongPlaces.sections(song), "verse bar 3"));
    }

    /** One bar takes all chords; else they must come in as many bars. */
    private static Progression inBars(Progression chords, int bars, Sentence.SentencePart part) {
        if (chords.bars().size() == bars) {
            return new Progression(chords.key(), chords.bars(), true);
        }
        if (bars == 1 && !chords.barred()) {
            return new Progression(chords.key(), List.of(new Bar(chords.slots(), false)), true);
        }
        throw Unreadable.because(
                part.text(),
                0,
                "a change",
                Clause.of(
                        "it has {0} bars, and the place has {1}", chords.bars().size(), bars),
                "change verse bars 1 to 2 to | Bm | A |");
    }
}
