package monochord.lesson.read;

import java.nio.file.Path;

/**
 * A lesson as the list of lessons shows it; its body has not been read.
 *
 * @param number its place in the library, {@code 2.1}
 * @param book the title of its book
 * @param title as its head says, or made of the slug where the head does not say
 * @param grade from 1 to 8, or 0 where the head does not say
 * @param isFaulty whether its head has a fault
 */
public record LibraryEntry(
        Path file, String number, String book, String slug, String title, int grade, boolean isFaulty) {}
