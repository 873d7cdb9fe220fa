package monochord.view.music;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import monochord.song.Section;
import monochord.song.SectionMusic;
import monochord.song.Song;
import monochord.song.SongHead;
import monochord.song.SongMusic;
import monochord.theory.note.Beats;
import monochord.view.Json;

/** A song for other programs: its fields as they are promised. */
final class SongFields {
    private SongFields() {}

    static void put(Song song, Json json) {
        SongHead head = song.head();
        json.put("kind", "song")
                .put("title", head.title())
                .put("by", head.by())
                .put("key", head.key().toString())
                .put("metre", head.metre().toString());
        if (head.tempo() > 0) {
            json.put("tempo", head.tempo());
        } else {
            json.put("tempo", (String) null);
        }
        Map<Section, SectionMusic> known = new IdentityHashMap<>();
        json.objects("sections", song.sections(), (object, section) -> section(song, section, known, object));
        sounding(song, json);
        changes(song, json);
        json.put("faults", song.faults()).put("remarks", song.remarks());
    }

    private static void sounding(Song song, Json json) {
        SongMusic music = song.music();
        SongMusic.Timeline written = music.written();
        json.objects(
                "notes",
                written.notes(),
                (object, note) -> length(
                        "beats", note.beats(), object.put("pitch", note.pitch().toString())));
        json.objects(
                "chords",
                written.chords(),
                (object, chord) -> beat(chord.start(), written.pickup(), object)
                        .put("symbol", chord.chord().toString()));
        json.put("words", words(song))
                .put(
                        "played",
                        music.played().notes().stream()
                                .map(SongMusic.SungNote::pitch)
                                .toList());
    }

    private static void section(Song song, Section section, Map<Section, SectionMusic> known, Json json) {
        SectionMusic music = known.computeIfAbsent(song.written(section), its -> SectionMusic.of(its, song.head()));
        json.put("name", section.name())
                .put("bars", music.count())
                .put("repeat", music.order().size() > music.bars().size());
    }

    private static List<String> words(Song song) {
        return song.sections().stream()
                .flatMap(section -> section.words().stream())
                .map(SongAnswer::sung)
                .filter(line -> !line.isBlank())
                .toList();
    }

    static void changes(Song song, Json json) {
        json.objects(
                "changes",
                song.changes(),
                (object, change) -> object.put("place", change.place())
                        .put("from", change.from())
                        .put("to", change.to())
                        .put("why", change.why())
                        .put("agreed", change.isAgreed()));
    }

    private static Json beat(Beats start, Beats pickup, Json json) {
        if (start.compareTo(pickup) >= 0) {
            return length("beat", start.minus(pickup), json);
        }
        Beats before = pickup.minus(start);
        return isShort(before)
                ? json.put("beat", -(double) before.numerator() / before.denominator())
                : json.put("beat", "-" + before);
    }

    /** A number where four digits hold it, else a fraction as text. */
    private static Json length(String name, Beats beats, Json json) {
        return isShort(beats)
                ? json.put(name, (double) beats.numerator() / beats.denominator())
                : json.put(name, beats.toString());
    }

    private static boolean isShort(Beats beats) {
        return 16 % beats.denominator() == 0;
    }
}
