package org.wickwise.command;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Names a folder with an instructor's own rules. */
final class OwnRulesOption {

    @Option(
            names = "--rules",
            paramLabel = "FOLDER",
            description = "a folder with rules of your own beside the shipped ones")
    private Optional<Path> folder;

    /** Empty where only the shipped rules count. */
    Optional<Path> folder() {
        return folder;
    }
}
