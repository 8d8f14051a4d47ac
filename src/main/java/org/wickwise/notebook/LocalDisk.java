package org.wickwise.notebook;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Disks of this computer, and those of others as far as they do what they say. */
class LocalDisk implements Disk {

    static final String LOCK = ".lock";
    private static final long PATIENCE_MILLISECONDS = 10_000;
    private static final long BETWEEN_TRIES_MILLISECONDS = 10;

    @Override
    public void write(Path newFile, byte[] content) throws IOException {
        try (FileChannel channel = FileChannel.open(newFile, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer left = ByteBuffer.wrap(content);
            while (left.hasRemaining()) {
                channel.write(left);
            }
            channel.force(true);
        }
    }

    /** A second name for a file is given in one step and never takes the place of another; a move may. */
    @Override
    public void publish(Path whole, Path name) throws IOException {
        try {
            link(name, whole);
        } catch (FileAlreadyExistsException | NoSuchFileException told) {
            throw told;
        } catch (UnsupportedOperationException | FileSystemException withoutLinks) {
            moveWhereNothingIs(whole, name);
        }
        sync(name.getParent());
    }

    /** Not every disk can do this. */
    void link(Path name, Path whole) throws IOException {
        Files.createLink(name, whole);
    }

    @Override
    public void replace(Path whole, Path name, Path olderFolder) throws IOException {
        makeFolder(olderFolder);
        try (FileChannel channel = lockFile(name.getParent());
                FileLock lock = locked(channel, name.getParent())) {
            if (lock.isValid()) {
                keep(name, olderFolder);
                Files.move(whole, name, StandardCopyOption.ATOMIC_MOVE);
            }
        }
        sync(name.getParent());
    }

    static void makeFolder(Path folder) throws IOException {
        try {
            Files.createDirectory(folder);
            sync(folder.toAbsolutePath().getParent());
        } catch (FileAlreadyExistsException there) {
            if (!Files.isDirectory(folder)) {
                throw there;
            }
        }
    }

    /** Who dies here holds the lock no longer, and the name is either given or not. */
    private static void moveWhereNothingIs(Path whole, Path name) throws IOException {
        try (FileChannel channel = lockFile(name.getParent());
                FileLock lock = locked(channel, name.getParent())) {
            if (!lock.isValid() || Files.exists(name, LinkOption.NOFOLLOW_LINKS)) {
                throw new FileAlreadyExistsException(name.toString());
            }
            Files.move(whole, name, StandardCopyOption.ATOMIC_MOVE);
        }
    }

    private void keep(Path name, Path olderFolder) throws IOException {
        byte[] content = Files.readAllBytes(name);
        String stem = name.getFileName().toString().replaceAll("\\.ya?ml$", "");
        for (int number = 1; ; number++) {
            Path older = olderFolder.resolve(stem + "-version-" + number + ".yaml");
            if (Files.exists(older, LinkOption.NOFOLLOW_LINKS)) {
                continue;
            }
            Path copy = olderFolder.resolve(TemporaryFiles.newName());
            write(copy, content);
            Files.move(copy, older, StandardCopyOption.ATOMIC_MOVE);
            sync(olderFolder);
            return;
        }
    }

    private static FileChannel lockFile(Path folder) throws IOException {
        return FileChannel.open(folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    }

    private static FileLock locked(FileChannel channel, Path folder) throws IOException {
        for (long waited = 0; waited < PATIENCE_MILLISECONDS; waited += BETWEEN_TRIES_MILLISECONDS) {
            try {
                FileLock lock = channel.tryLock();
                if (lock != null) {
                    return lock;
                }
            } catch (OverlappingFileLockException anotherThread) {
                // waits like for another process
            }
            pause();
        }
        throw new FileSystemException(folder.toString(), null, "another program holds the notebook for too long");
    }

    private static void pause() throws IOException {
        try {
            Thread.sleep(BETWEEN_TRIES_MILLISECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException("stopped while waiting for another program", stopped);
        }
    }

    /** A name outlasts a power cut once its folder is written out; systems that open no folders do so by themselves. */
    private static void sync(Path folder) throws IOException {
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }
}
