package crumbtrail.web;

import com.fasterxml.jackson.databind.JsonNode;
import crumbtrail.report.Report.NextBakeSheet;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;

/** The next bake: as a page and as a file. */
final class NextRoutes {
  private static final String FORM = "application/x-www-form-urlencoded";
  private static final String JSON = "application/json";

  private final Tracer tracer;
  private final Guards guards;

  NextRoutes(Tracer tracer, Guards guards) {
    this.tracer = tracer;
    this.guards = guards;
  }

  void register(RoutesConfig routes) {
    routes.post("/next", this::page);
    routes.post("/next.json", this::file);
  }

  private void page(Context ctx) {
    NextPage page = made(form(ctx), ctx);
    if (page.next() == null) {
      ctx.status(400);
    }
    Rendering.page(ctx, "next.jte", Map.of("page", page));
  }

  private NextPage made(WishForm wish, Context ctx) {
    if (!wish.faults().isEmpty()) {
      return NextPage.refused(wish, List.of());
    }
    Traced<NextBakeSheet> traced = tracer.next(wish.sheet(), wish.wish());
    return traced instanceof Traced.Made<NextBakeSheet> made
        ? NextPage.made(AdviceViews.next(made.report(), Units.of(ctx), Texts.of(ctx)), wish)
        : NextPage.refused(wish, ((Traced.Refused<NextBakeSheet>) traced).problems());
  }

  // A file that cannot be written answers with the page that says why.
  private void file(Context ctx) {
    WishForm wish = form(ctx);
    Traced<NextBakeSheet> traced =
        wish.faults().isEmpty()
            ? tracer.next(wish.sheet(), wish.wish())
            : new Traced.Refused<>(List.of());
    if (traced instanceof Traced.Made<NextBakeSheet> made) {
      JsonNode sheet = made.report().sheet();
      ctx.contentType(JSON)
          .header("Content-Disposition", "attachment; filename=\"next-bake.json\"")
          .result(sheet.toPrettyString() + "\n");
    } else {
      ctx.status(400);
      Rendering.page(
          ctx,
          "next.jte",
          Map.of(
              "page", NextPage.refused(wish, ((Traced.Refused<NextBakeSheet>) traced).problems())));
    }
  }

  private WishForm form(Context ctx) {
    guards.checkOrigin(ctx);
    guards.checkType(ctx, FORM);
    return WishForm.of(
        FormBody.read(ctx.bodyAsBytes())
            .orElseThrow(() -> new Refusal(400, "The form arrived damaged.")),
        Texts.of(ctx));
  }
}
