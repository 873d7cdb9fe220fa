package monochord.shell.verb.song;

import static monochord.shell.sentence.FormPart.alone;
import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.fixed;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.orAgain;
import static monochord.shell.sentence.FormPart.takes;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.course.rehearsal.RehearsalGoal;
import monochord.harmony.Progression;
import monochord.score.BarGrid;
import monochord.score.Hand;
import monochord.score.HeardPart;
import monochord.score.SongScore;
import monochord.shell.rehearsal.RehearsalMusic;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.SentenceKey;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.shell.sound.SongDirections;
import monochord.shell.verb.sounding.PlaybackOptions;
import monochord.song.SectionMusic;
import monochord.song.Song;
import monochord.song.SongHead;
import monochord.song.SongPlace;
import monochord.sound.Directions;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;

/** Begins a rehearsal at the instrument: a place of the open song, or chords that are typed. */
final class RehearseVerb implements Verb {
    private static final String EXAMPLE = "rehearse | C | Am | F | G | in C at 96";
    private static final String WITH = "with";
    private static final String FOR = "for";
    private static final String IN = "in";
    private static final Pattern KEYS = Pattern.compile("(?i)keys(?:\\s+(.*))?");
    private static final Pattern WHOLE = Pattern.compile("(?i)(?:the\\s+)?(?:whole\\s+)?song");
    private static final int USUAL_MINUTES = 10;
    private static final int LONGEST = 30;

    @Override
    public String word() {
        return "rehearse";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.LEARNING,
                        Phrase.of("practise a place at the instrument, at a pace that follows your playing"))
                .form(
                        takes(Value.PLACE, Value.PROGRESSION),
                        may(clause(IN, Value.KEY)),
                        may(clause(WITH, Value.PART)),
                        may(clause(PlaybackOptions.METRE, Value.METRE)),
                        may(clause(PlaybackOptions.AS, Value.PATTERN)),
                        may(clause(PlaybackOptions.AT, Value.BPM)),
                        may(alone(PlaybackOptions.SWING)),
                        may(clause(FOR, Value.MINUTES)),
                        orAgain(),
                        fixed("keys"),
                        may(takes(Value.KEYS)))
                .examples(EXAMPLE, "rehearse Dm7 G7 Cmaj7 in C with bass as walking for 5", "rehearse keys F Bb Eb");
    }

    @Override
    public boolean isNoName(String text, int place) {
        return PlaybackOptions.sayHow(text, place);
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        String body = sentence.body().text();
        Optional<RehearsedPlace> place = inSong(sentence, sitting);
        Matcher keys = KEYS.matcher(body);
        if (place.isEmpty() && keys.matches()) {
            return BandKeys.said(Optional.ofNullable(keys.group(1)).orElse(""), sitting);
        }
        if (body.isEmpty() && sitting.teaching().rehearsing().isOpen()) {
            return sitting.teaching().rehearsing().again();
        }
        if (place.isEmpty() && SongPlaces.isName(body)) {
            Song song = sitting.song().song().orElse(null);
            if (song == null) {
                return SongVerb.none(sitting);
            }
            throw Unreadable.because(body, 0, "a place in the song", SongPlaces.sections(song), "rehearse song");
        }
        RehearsedPlace found = place.orElseGet(() -> typed(sentence, sitting));
        RehearsalMusic music = music(found, sentence, sitting);
        int minutes = sentence.clause(FOR)
                .map(part -> part.read(RehearseVerb::minutes))
                .orElse(USUAL_MINUTES);
        Key first = sentence.clause(IN).isPresent()
                ? SentenceKey.of(sentence, sitting)
                : found.chords().key();
        RehearsalGoal goal = new RehearsalGoal(
                music.bars(), found.firstBar(), music.directions().tempo(), BandKeys.from(first, sitting));
        return sitting.teaching().rehearsing().begin(music, goal, minutes);
    }

    /** What is to be rehearsed, before it is said how. */
    private record RehearsedPlace(
            Phrase title,
            Progression chords,
            RehearsalMusic.TuneInBars tune,
            BarGrid metre,
            Optional<SongHead> head,
            int firstBar) {}

    private static Optional<RehearsedPlace> inSong(Sentence sentence, Sitting sitting) {
        String body = sentence.body().text();
        return sitting.song()
                .song()
                .flatMap(song -> SongPlace.find(body, song)
                        .filter(found -> found.end() == body.length())
                        .map(found -> place(found.place(), song))
                        .or(() -> Optional.of(song)
                                .filter(any -> WHOLE.matcher(body).matches())
                                .map(RehearseVerb::whole)));
    }

    private static RehearsedPlace place(SongPlace place, Song song) {
        SectionMusic music = place.isWhole() ? place.music(song).playedOut() : place.music(song);
        int last = place.isWhole() ? music.count() - 1 : place.last();
        Progression chords = music.progression(place.first(), last)
                .orElseThrow(() -> Unreadable.because(
                        place.section().name(),
                        0,
                        "a place to rehearse",
                        Clause.of(
                                "no chords are written for {0}", place.section().name()),
                        "rehearse verse"));
        return place(title(place, song, music.count()), chords, music, place.first(), song.head());
    }

    private static RehearsedPlace whole(Song song) {
        SectionMusic music = SectionMusic.playedOut(song);
        Progression chords = music.progression(0, music.count() - 1)
                .orElseThrow(() -> Unreadable.because(
                        "song", 0, "a place to rehearse", "no chords stand in the song", "rehearse verse"));
        return place(Phrase.typed(song.head().title()), chords, music, 0, song.head());
    }

    private static RehearsedPlace place(
            Phrase title, Progression chords, SectionMusic music, int first, SongHead head) {
        return new RehearsedPlace(
                title,
                chords,
                (from, to) -> music.melody(first + from, first + to, head.metre()),
                SongScore.bars(head.metre()),
                Optional.of(head),
                first + 1);
    }

    private static Phrase title(SongPlace place, Song song, int bars) {
        boolean repeats = place.isWhole() && bars > place.music(song).count();
        return repeats ? Phrase.of("{0} with its repeats, {1} bars,", place.phrase(), bars) : place.phrase();
    }

    private static RehearsedPlace typed(Sentence sentence, Sitting sitting) {
        Key key = SentenceKey.of(sentence, sitting);
        if (sentence.body().isEmpty()) {
            throw Unreadable.because(
                    sentence.whole(), 0, "a rehearsal", "a place of the open song or chords are wanted", EXAMPLE);
        }
        Progression chords = sentence.body().read(text -> Progression.parse(text, key));
        Phrase title = Phrase.row(chords.symbols());
        return new RehearsedPlace(
                title,
                RehearsalMusic.inBars(chords),
                (first, last) -> Optional.empty(),
                PlaybackOptions.metre(sentence),
                Optional.empty(),
                1);
    }

    private static RehearsalMusic music(RehearsedPlace place, Sentence sentence, Sitting sitting) {
        Directions usual = sitting.stage().directions();
        Directions said =
                place.head().map(head -> SongDirections.of(head, usual)).orElse(usual);
        if (sentence.clause(PlaybackOptions.AT).isPresent()) {
            said = said.at(sentence.clause(PlaybackOptions.AT).get().read(PlaybackOptions::tempo));
        }
        if (sentence.clause(PlaybackOptions.AS).isPresent()) {
            said = said.as(sentence.clause(PlaybackOptions.AS).get().read(PlaybackOptions::pattern));
        }
        said = said.inSwing(
                said.swung() || sentence.clause(PlaybackOptions.SWING).isPresent());
        boolean hasTune = place.tune().bars(0, place.chords().bars().size() - 1).isPresent();
        Set<Hand> played = sentence.clause(WITH)
                .map(part -> part.read(text -> played(text, hasTune)))
                .orElse(hasTune ? EnumSet.of(Hand.LEFT, Hand.TUNE) : EnumSet.of(Hand.LEFT));
        PlaybackOptions.fits(sentence.whole(), place.metre(), said.pattern());
        return new RehearsalMusic(place.title(), place.chords(), place.tune(), place.metre(), played, said);
    }

    /** The parts the player wants to hear. */
    private static Set<Hand> played(String text, boolean hasTune) {
        Set<Hand> played = EnumSet.noneOf(Hand.class);
        for (String part : text.toLowerCase(Locale.ROOT).split("\\s*(?:,|\\band\\b|\\+)\\s*")) {
            played.addAll(hands(part.replaceFirst("^the ", ""), text));
        }
        boolean nothingLeft =
                played.contains(Hand.LEFT) && played.contains(Hand.RIGHT) && (!hasTune || played.contains(Hand.TUNE));
        if (nothingLeft || played.contains(Hand.TUNE) && !hasTune) {
            throw Unreadable.because(
                    text,
                    0,
                    "what I play with you",
                    nothingLeft ? "nothing is left for you" : "no tune is written there",
                    "with bass");
        }
        return played;
    }

    private static Set<Hand> hands(String part, String text) {
        if (part.equals("click")) {
            return Set.of();
        }
        HeardPart named = part.equals("hands")
                ? HeardPart.BOTH_HANDS
                : HeardPart.named(part)
                        .orElseThrow(() -> Unreadable.because(
                                text,
                                0,
                                "what I play with you",
                                "expected bass, chords, hands, tune or click",
                                "with bass and tune"));
        return switch (named) {
            case BASS, LEFT_HAND -> Set.of(Hand.LEFT);
            case TUNE -> Set.of(Hand.TUNE);
            case BOTH_HANDS -> Set.of(Hand.LEFT, Hand.RIGHT);
            default -> Set.of(Hand.RIGHT);
        };
    }

    private static int minutes(String text) {
        String number = text.replaceAll(" *(min|minutes?)$", "");
        if (!number.matches("[1-9][0-9]?") || Integer.parseInt(number) > LONGEST) {
            throw Unreadable.because(
                    text, 0, "a time", Clause.of("expected whole minutes from 1 to {0}", LONGEST), "for 10");
        }
        return Integer.parseInt(number);
    }
}
