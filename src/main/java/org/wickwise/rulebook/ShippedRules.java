package org.wickwise.rulebook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.kie.api.KieBase;

/**
 * The rules that were compiled when the program was packaged. They are loaded on a thread of their own while a start reads
 * solvents and rules, which takes about as long; only then is it known whether they are the rules that were read.
 */
public final class ShippedRules {

    private static final String INDEX = "META-INF/wickwise/compiled-rules";

    private final CompletableFuture<Optional<Loaded>> loading;

    private record Loaded(String fingerprint, KieBase rules) {}

    private ShippedRules(CompletableFuture<Optional<Loaded>> loading) {
        this.loading = loading;
    }

    /** Begins to load them. */
    public static ShippedRules loading() {
        return new ShippedRules(CompletableFuture.supplyAsync(ShippedRules::load));
    }

    /** For a start that will not need them. */
    public static ShippedRules none() {
        return new ShippedRules(CompletableFuture.completedFuture(Optional.empty()));
    }

    /** The rules of this fingerprint, waited for where they are still loading; empty when none of it were shipped. */
    Optional<KieBase> of(String fingerprint) {
        return loading.join()
                .filter(loaded -> loaded.fingerprint().equals(fingerprint))
                .map(Loaded::rules);
    }

    private static Optional<Loaded> load() {
        ClassLoader program = ShippedRules.class.getClassLoader();
        try (InputStream index = program.getResourceAsStream(INDEX)) {
            if (index == null) {
                return Optional.empty();
            }
            String fingerprint = new String(index.readAllBytes(), StandardCharsets.UTF_8);
            Optional<KieBase> rules = CompiledRules.loaded(program, fingerprint);
            // A first session, with nothing laid before the rules, readies what every later one needs.
            rules.map(KieBase::newKieSession).ifPresent(session -> {
                session.fireAllRules();
                session.dispose();
            });
            return rules.map(ready -> new Loaded(fingerprint, ready));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** The same jar, saying which rules it holds. */
    static byte[] indexed(byte[] jar, String fingerprint) {
        ByteArrayOutputStream indexed = new ByteArrayOutputStream(jar.length);
        try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(jar));
                ZipOutputStream to = new ZipOutputStream(indexed)) {
            for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
                to.putNextEntry(new ZipEntry(entry.getName()));
                from.transferTo(to);
            }
            to.putNextEntry(new ZipEntry(INDEX));
            to.write(fingerprint.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new IllegalStateException("copying in memory cannot fail", e);
        }
        return indexed.toByteArray();
    }
}
