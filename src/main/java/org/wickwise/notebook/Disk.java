package org.wickwise.notebook;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;

/** What a notebook asks of a disk. Each is done, and would outlast a power cut, when it returns. */
interface Disk {

    /** Writes a file that is not there yet. */
    void write(Path newFile, byte[] content) throws IOException;

    /**
     * Gives a whole file its name in the same folder, in one step.
     *
     * @throws FileAlreadyExistsException when the name is taken, whoever took it
     */
    void publish(Path whole, Path name) throws IOException;

    /** Puts a whole file into the place of another in one step, and keeps the other under a name that is not taken. */
    void replace(Path whole, Path name, Path olderFolder) throws IOException;
}
