package monochord.shell.storage;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.practice.mastery.Attempt;
import monochord.practice.mastery.Evidence;
import monochord.practice.mastery.Knowledge;
import monochord.record.Agenda;
import monochord.record.Bookmarks;
import monochord.record.KeptSet;
import monochord.text.Phrase;

/** Forgets everything when the program ends, and has nothing to tell. */
final class InMemoryKeeper implements Keeper {
    private final List<Evidence> evidence = new ArrayList<>();
    private final Optional<Path> classFolder;
    private KeptSet set = KeptSet.NONE;

    InMemoryKeeper(Optional<Path> classFolder) {
        this.classFolder = classFolder;
    }

    @Override
    public Optional<Path> classFolder() {
        return classFolder;
    }

    @Override
    public void ready() {
        // memory is always ready
    }

    @Override
    public void keep(Attempt attempt) {
        attempt.evidence().ifPresent(evidence::add);
    }

    @Override
    public Knowledge knowledge() {
        return Knowledge.of(evidence);
    }

    @Override
    public List<Phrase> notices() {
        return List.of();
    }

    @Override
    public Agenda agenda() {
        return Agenda.NONE;
    }

    @Override
    public Bookmarks bookmarks() {
        return Bookmarks.NONE;
    }

    @Override
    public void keep(Bookmarks bookmarks) {
        // the sitting holds them itself
    }

    @Override
    public KeptSet set() {
        return set;
    }

    @Override
    public void keep(KeptSet now) {
        set = now;
    }

    @Override
    public void leave(Agenda agenda) {
        // there is no next sitting
    }
}
