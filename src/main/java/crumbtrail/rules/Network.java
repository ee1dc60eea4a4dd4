package crumbtrail.rules;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.runtime.KieContainer;

/** The engine's network of all rules, laid out by a thread of its own. Safe for many threads. */
final class Network {
  private final FutureTask<KieBase> laying;

  private Network(FutureTask<KieBase> laying) {
    this.laying = laying;
  }

  /** Begins to lay the rules out and returns at once. */
  static Network begin(RuleBase.Parts parts, String version) {
    FutureTask<KieBase> laying = new FutureTask<>(() -> lay(parts, version));
    Thread thread = new Thread(laying, "lay-out-rules");
    thread.setDaemon(true);
    thread.start();
    return new Network(laying);
  }

  /** The network, once it is laid out. */
  KieBase base() {
    try {
      return laying.get();
    } catch (ExecutionException thrown) {
      if (thrown.getCause() instanceof IOException missing) {
        throw new UncheckedIOException("the rules cannot be read", missing);
      }
      throw new IllegalStateException("the rules cannot be laid out", thrown.getCause());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped before the rules were laid out", stopped);
    }
  }

  /** Whether it is laid out, or cannot be, which {@link #base} tells. */
  boolean done() {
    return laying.isDone();
  }

  private static KieBase lay(RuleBase.Parts parts, String version) throws IOException {
    List<PlainRule> plain;
    try (DataInputStream in =
        new DataInputStream(new BufferedInputStream(parts.open(RuleBaseBuilder.PLAIN)))) {
      plain = PlainRule.read(in);
    }
    if (!plain.isEmpty()) {
      return PlainNetwork.of(plain);
    }
    try (InputStream in = parts.open(RuleBaseBuilder.MODULE)) {
      return compiled(in, version);
    }
  }

  private static KieBase compiled(InputStream module, String version) {
    KieServices services = KieServices.get();
    services.getRepository().addKieModule(services.getResources().newInputStreamResource(module));
    KieContainer container = services.newKieContainer(RuleCompiler.release(version));
    return container.getKieBase(RuleCompiler.BASE);
  }
}
