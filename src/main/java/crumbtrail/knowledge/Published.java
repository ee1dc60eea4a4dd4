package crumbtrail.knowledge;

import com.fasterxml.jackson.annotation.JsonPropertyOrder;

/**
 * A published table names a cause for a sign.
 *
 * @param sign key of the sign
 * @param cause key of the cause
 * @param source id of the table in the bibliography; tables of one lineage count as one witness
 */
@JsonPropertyOrder({"sign", "cause", "source"})
public record Published(String sign, String cause, String source) {}
