package monochord.shell.sitting;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import monochord.harmony.colour.Idea;
import monochord.song.Song;
import monochord.song.SongFile;
import monochord.song.SongPlace;
import monochord.song.SongReader;
import monochord.text.Phrase;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;

/** The song that is open at the line, what was done to it, and what was proposed for it last. */
public final class OpenSong {
    private static final int MOST_BACK = 100;

    private final Deque<Song> before = new ArrayDeque<>();
    private NewSong newSong;
    private Song song;
    private Song opened;
    private Path file;
    private String name = "";
    private String inFile;
    private final Set<String> noted = new HashSet<>();
    private SongPlace place;
    private boolean isWhole;
    private SongPlace proposedFor;
    private List<Idea> ideas = List.of();

    /** @param itsFile where changes are saved; null for a song that came from another format */
    public void open(Song newSong, Path itsFile) {
        song = newSong;
        opened = newSong;
        file = itsFile;
        before.clear();
        ideas = List.of();
        place = null;
    }

    /** Begins a song in a file that is not there, or goes on with one that has no section; what is asked first. */
    public Answer begin(Path newFile, String name, Optional<Song> begun, Sitting sitting) {
        String title = name.replaceFirst("(?i)\\.md$", "")
                .replaceFirst(".*/", "")
                .replace('-', ' ')
                .replace('_', ' ');
        newSong = new NewSong(
                sitting,
                newFile,
                name,
                begun.map(its -> NewSongText.begun(its.head())).orElseGet(() -> NewSongText.begun(title)));
        return newSong.begin();
    }

    /** The song that is being begun. */
    public Optional<NewSong> newSong() {
        return Optional.ofNullable(newSong);
    }

    void leaveNew() {
        newSong = null;
    }

    public Optional<Song> song() {
        return Optional.ofNullable(song);
    }

    /** As it was when it was opened. */
    public Optional<Song> opened() {
        return Optional.ofNullable(opened);
    }

    /** Remembers it for the next sitting. */
    public void remember(Sitting sitting) {
        if (file != null && song != null) {
            RememberedSong.keep(file, song.head().title(), sitting);
        }
    }

    /** What is said where none is open. */
    public Phrase offer(Sitting sitting) {
        return RememberedSong.of(sitting)
                .map(RememberedSong::offer)
                .orElseGet(() -> Phrase.sentence("{0} opens one.", Phrase.verb("song my-song.md")));
    }

    /**
     * What its file holds, as far as we know.
     *
     * @param typed the name of the file as it was typed
     * @param text as it was read or written last
     */
    public void holds(String typed, String text) {
        name = typed;
        inFile = text;
        noted.add(typed);
    }

    /** The name of its file as it was typed; empty where it has none. */
    public String name() {
        return name;
    }

    /** What its file held when it was read or written last; null where that is not known. */
    public String inFile() {
        return inFile;
    }

    /** Whether a notebook of this sitting knows how the file of that name came about. */
    public boolean isNoted(String typed) {
        return noted.contains(typed);
    }

    public Optional<Path> file() {
        return Optional.ofNullable(file);
    }

    /** From now on it is kept there. */
    public void keepIn(Path newFile) {
        file = newFile;
    }

    public void change(Song changed) {
        before.push(song);
        if (before.size() > MOST_BACK) {
            before.removeLast();
        }
        song = changed;
        ideas = List.of();
    }

    /** Takes the last change back; whether there was one. */
    public boolean undo() {
        if (before.isEmpty()) {
            return false;
        }
        song = before.pop();
        ideas = List.of();
        return true;
    }

    /** What the sentence that is being read names of the song, perhaps nothing. */
    public void name(SongPlace named) {
        isWhole = false;
        place = named;
    }

    /** The sentence that is being read means the whole song. */
    public void asksWhole() {
        isWhole = true;
    }

    /** Whether the sentence that is being read means the whole song. */
    public boolean isWhole() {
        return isWhole;
    }

    public Optional<SongPlace> place() {
        return Optional.ofNullable(place);
    }

    /** What was proposed for the place that was named. */
    public void propose(List<Idea> proposed) {
        ideas = List.copyOf(proposed);
        proposedFor = place;
    }

    /** The place for which that was. */
    public Optional<SongPlace> proposedFor() {
        return Optional.ofNullable(proposedFor);
    }

    /** In the order in which they were shown. */
    public List<Idea> ideas() {
        return ideas;
    }

    private static Path standing(OpenSong other, Outside outside) {
        try {
            Path itsFile = outside.file(other.name);
            Song there = SongReader.read(SongFile.text(itsFile, other.name));
            return there.toString().equals(other.song.toString()) ? itsFile : null;
        } catch (IOException | Unreadable gone) {
            return null;
        }
    }

    /** Stands as another one stands; its file is kept only where it holds what the other has come to. */
    void goOnFrom(OpenSong other, Outside outside) {
        open(other.song, other.file == null ? null : standing(other, outside));
        opened = other.opened;
        before.addAll(other.before);
        ideas = other.ideas;
        place = other.place;
        proposedFor = other.proposedFor;
        newSong = null;
        name = other.name;
        inFile = null;
        noted.addAll(other.noted);
    }
}
