package crumbtrail.web;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.Photo;
import crumbtrail.bakelog.PhotoMaker;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Semaphore;

/** Photos of bakes: taken in, shown, deleted. */
final class PhotoRoutes {
  /** Photos of one bake. */
  static final int MOST = 20;

  /** A photo takes up to half a gigabyte while it is decoded, so few are at a time. */
  private static final Semaphore DESKS = new Semaphore(2);

  private final LogHouse house;
  private final Guards guards;

  PhotoRoutes(LogHouse house, Guards guards) {
    this.house = house;
    this.guards = guards;
  }

  void register(RoutesConfig routes) {
    routes.get("/log/photos/{photo}", this::show);
    routes.post("/log/{id}/photos", this::add);
    routes.post("/log/{id}/photos/{photo}/delete", this::delete);
  }

  private void show(Context ctx) {
    Photo photo = house.sight(house.viewer(ctx)).photo(LogHouse.id(ctx, "photo"));
    ctx.contentType(photo.note().kind())
        .header("Cache-Control", "private, no-cache")
        .result(photo.picture());
  }

  private void add(Context ctx) throws IOException {
    Viewer viewer = house.viewer(ctx);
    long id = LogHouse.id(ctx, "id");
    guards.checkOrigin(ctx);
    if (!String.valueOf(ctx.contentType()).startsWith("multipart/form-data")) {
      throw new Refusal(415, "The body must be of the type multipart/form-data.");
    }
    // The bake is looked at first, so that nobody sends a photo for nothing.
    Bake bake = house.sight(viewer).bake(id);
    UploadedFile file = uploaded(ctx);
    Map<String, String> fields = new LinkedHashMap<>();
    ctx.formParamMap()
        .forEach((name, values) -> fields.put(name, values.isEmpty() ? "" : values.get(0)));
    house.gate().checkSeal(ctx, fields);
    if (file == null || file.size() == 0) {
      LogHouse.on(ctx, "/log/" + id + "?done=nophoto#photos");
      return;
    }
    if (bake.photos().size() >= MOST) {
      throw new Refusal(400, "A bake has room for " + MOST + " photos. Delete one first.");
    }
    try (InputStream in = file.content()) {
      house.sight(viewer).addPhoto(id, made(in));
    }
    LogHouse.on(ctx, "/log/" + id + "?done=photo#photos");
  }

  private static UploadedFile uploaded(Context ctx) {
    try {
      return ctx.uploadedFile("photo");
    } catch (Exception fault) {
      // The libraries that take parts apart answer what is broken or too long in many ways, and
      // one of them is written in a language that declares no exceptions.
      throw new Refusal(
          413,
          "The photo is over 25 MB, or did not arrive whole. Make it smaller and send it again.");
    }
  }

  /** Makes a photo safe to keep. */
  static Photo made(InputStream in) throws IOException {
    DESKS.acquireUninterruptibly();
    try {
      return PhotoMaker.of(in.readNBytes(PhotoMaker.MOST_BYTES + 1));
    } catch (PhotoMaker.NoPhoto fault) {
      throw new Refusal(400, "The file cannot be kept as a photo: " + fault.getMessage() + ".");
    } finally {
      DESKS.release();
    }
  }

  private void delete(Context ctx) {
    Viewer viewer = house.viewer(ctx);
    house.forms().read(ctx);
    long id = LogHouse.id(ctx, "id");
    house.sight(viewer).deletePhoto(LogHouse.id(ctx, "photo"));
    LogHouse.on(ctx, "/log/" + id + "?done=photogone#photos");
  }
}
