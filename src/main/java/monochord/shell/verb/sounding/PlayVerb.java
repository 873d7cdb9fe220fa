package monochord.shell.verb.sounding;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.fixed;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.takes;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import monochord.harmony.MusicText;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.score.BarGrid;
import monochord.score.HeardPart;
import monochord.score.Piece;
import monochord.shell.playback.Playable;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.SentenceKey;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.AbComparison;
import monochord.shell.sitting.PlaybackState;
import monochord.shell.sitting.Sitting;
import monochord.shell.sound.PlayAnswer;
import monochord.sound.Directions;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;

/** Makes music heard, or writes it to a file. */
final class PlayVerb implements Verb {
    static final String THIS = "this";

    private static final String EXAMPLE = "play IV I V bVI V I in D at 84";
    private static final String WHAT = "something to play";
    private static final String OF = " of ";
    static final String OVER = "over";
    /** Notes with lengths, or rests among them. */
    private static final Pattern TUNE = Pattern.compile("(?s).*([^\\s:]:\\s*[0-9]|(^|\\s)r(\\s|$)).*");

    @Override
    public String word() {
        return "play";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.SOUND,
                        Phrase.of("play music, or write it to a file; alone, play the last again"))
                .form(
                        may(takes(Value.PART), fixed("of")),
                        takes(Value.MUSIC),
                        may(clause(OVER, Value.CHORDS)),
                        may(clause("in", Value.KEY)))
                .form(PlaybackOptions.form())
                .form(Recording.form())
                .examples(
                        EXAMPLE,
                        "play F C G Ab as broken with electric piano 1",
                        "play E4:2 D4 C4 over F G Am in C loop 2",
                        "play | F | C | G7 | C | in C metre 3/4 as bass-and-chord count-in",
                        "play tenor of F C G Ab",
                        "play D harmonic minor --wav scale.wav");
    }

    @Override
    public boolean isNoName(String text, int place) {
        return PlaybackOptions.sayHow(text, place);
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Optional<PlayedSong> song = PlayedSong.of(sentence, sitting);
        if (song.isPresent()) {
            Directions directions = PlaybackOptions.of(sentence, song.get().directions());
            return sound(sentence, song.get().take(), song.get().part(), directions, sitting);
        }
        Wanted wanted = Wanted.of(sentence.body());
        if (wanted.isLast()) {
            return again(sentence, wanted.part, sitting);
        }
        Playable take = take(wanted.music, sentence, sitting);
        Directions directions = PlaybackOptions.of(sentence, sitting.stage().directions());
        return sound(sentence, take, wanted.part, directions, sitting);
    }

    /** A part, and of what. */
    private record Wanted(HeardPart part, Sentence.SentencePart music) {
        static Wanted of(Sentence.SentencePart body) {
            String text = body.text();
            int of = text.toLowerCase(Locale.ROOT).indexOf(OF);
            Optional<HeardPart> whole = HeardPart.named(text);
            if (whole.isPresent()) {
                return new Wanted(whole.get(), new Sentence.SentencePart("", body.place() + text.length()));
            } else if (of < 0) {
                return new Wanted(HeardPart.BOTH_HANDS, body);
            }
            Sentence.SentencePart named = new Sentence.SentencePart(text.substring(0, of), body.place());
            return new Wanted(named.read(SoundNames::part), behind(body, of + OF.length()));
        }

        private static Sentence.SentencePart behind(Sentence.SentencePart body, int from) {
            String rest = body.text().substring(from);
            return new Sentence.SentencePart(
                    rest.strip(),
                    body.place() + from + rest.length() - rest.stripLeading().length());
        }

        boolean isLast() {
            return music.isEmpty() || music.text().equalsIgnoreCase(THIS);
        }
    }

    /** A tune where lengths, rests or chords under it are written; else what {@link MusicText} reads. */
    static Playable take(Sentence.SentencePart music, Sentence sentence, Sitting sitting) {
        Key key = SentenceKey.of(sentence, sitting);
        Optional<Progression> chords =
                sentence.clause(OVER).map(part -> part.read(text -> Progression.parse(text, key)));
        boolean tune = chords.isPresent() || TUNE.matcher(music.text()).matches();
        return tune
                ? counted(Playable.of(music.read(Melody::parse), chords, key), PlaybackOptions.metre(sentence))
                : Playable.of(music.read(text -> MusicText.read(text, key)), key, PlaybackOptions.metre(sentence));
    }

    /** A tune brings its own bars; where they are as long as those of a metre that is said, it says what is counted. */
    private static Playable counted(Playable tune, BarGrid metre) {
        BarGrid own = tune.piece().metre();
        return own.bar().equals(metre.bar()) ? tune.playing(tune.piece().in(metre.after(own.pickup()))) : tune;
    }

    private static Unreadable nothing(Sentence sentence) {
        return sentence.clause(OVER).isPresent()
                ? Unreadable.because(sentence.whole(), 0, WHAT, "a tune comes before over", EXAMPLE)
                : Unreadable.because("play", 0, "of use now", "nothing has been played yet", EXAMPLE);
    }

    private static Answer again(Sentence sentence, HeardPart part, Sitting sitting) {
        if (part == HeardPart.BOTH_HANDS && sitting.question().isByEar()) {
            return HeardAgain.of(sentence, sitting);
        }
        PlaybackState stage = sitting.stage();
        Playable last = stage.last(sitting.key())
                .filter(found -> sentence.clause(OVER).isEmpty())
                .orElseThrow(() -> nothing(sentence));
        Directions directions = PlaybackOptions.of(sentence, stage.lastDirections());
        if (stage.contest().isPresent() && part == HeardPart.BOTH_HANDS) {
            return again(sentence, stage.contest().get(), directions, sitting);
        }
        boolean newMetre = sentence.clause(PlaybackOptions.METRE).isPresent();
        Playable take = newMetre ? last.playing(last.piece().in(PlaybackOptions.metre(sentence))) : last;
        return sound(sentence, take, part, directions, sitting);
    }

    private static Answer again(Sentence sentence, AbComparison contest, Directions directions, Sitting sitting) {
        AbComparison now =
                directions.equals(contest.directions()) ? contest : new AbComparison(contest.takes(), directions);
        return Recording.written(sentence, now::performance, sitting).orElseGet(() -> now.listened(sitting));
    }

    private static Answer sound(
            Sentence sentence, Playable take, HeardPart part, Directions directions, Sitting sitting) {
        Piece piece = part.of(take.piece())
                .orElseThrow(() -> Unreadable.because(
                        sentence.whole(),
                        0,
                        WHAT,
                        Clause.of("there is no {0} in it", part.toString()),
                        "play bass of F C G"));
        PlaybackOptions.within(sentence.whole(), piece, directions);
        sitting.stage().remember(take, directions);
        return Recording.written(sentence, () -> directions.perform(piece, take.key()), sitting)
                .orElseGet(() -> new PlayAnswer(
                        List.of(title(take, part, sentence)),
                        directions,
                        sitting.stage().ear().play(directions.perform(piece, take.key()))));
    }

    private static Phrase title(Playable take, HeardPart part, Sentence sentence) {
        Phrase title =
                part == HeardPart.BOTH_HANDS ? take.title() : Phrase.of("the {0} of {1}", part.inWords(), take.title());
        return sentence.clause(PlaybackOptions.METRE)
                .map(said -> Phrase.of("{0}, in {1},", title, Phrase.typed(said.text())))
                .orElse(title);
    }
}
