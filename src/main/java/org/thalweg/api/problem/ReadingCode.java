package org.thalweg.api.problem;

/** What can be wrong with a body before anyone looks at the roof. A code never changes its meaning. */
public enum ReadingCode {
    /** The body has no content. */
    EMPTY_BODY,
    /** The connection ended before the body did. */
    CUT_OFF,
    /** The bytes are not UTF-8, or a string holds half of a surrogate pair. */
    MALFORMED_TEXT,
    /** The text is not JSON. */
    MALFORMED_JSON,
    /** Lists and objects lie deeper in each other than is read. */
    TOO_DEEP,
    /** An object has two members of one name. */
    DUPLICATE_MEMBER,
    /** An object has a member that is not known there. */
    UNKNOWN_MEMBER,
    /** A member that must be there is not. */
    MISSING_MEMBER,
    /** A value is of another JSON type than is read there. */
    WRONG_TYPE,
    /** A number is below or above its range. */
    OUT_OF_RANGE,
    /** A list or object has more entries than are read. */
    TOO_MANY,
    /** A list or object has fewer entries than are needed. */
    TOO_FEW,
    /** A string, a name or a number has more characters than are read. */
    TOO_LONG,
    /** A string is empty where a name is needed. */
    TOO_SHORT,
    /** A string can't be read as a length. */
    BAD_LENGTH,
    /** A string or object can't be read as a pitch. */
    BAD_PITCH,
    /** A unit that is not known. */
    BAD_UNIT,
    /** A word that is not one of those read there. */
    UNKNOWN_VALUE,
    /** The roof is given in no form, or in more than one. */
    ROOF_FORM,
    /** Members are given that go instead of each other, or none of them is. */
    EITHER_OR,
    /** A string can't be read as a number. */
    BAD_NUMBER,
    /** A digest that is none. */
    BAD_DIGEST,
    /** A trade item number whose last digit does not check the others. */
    BAD_GTIN,
    /** Price breaks that leave a gap or overlap. */
    BREAKS_DO_NOT_JOIN,
    /** Two entries of a price book say the same, or have the same id. */
    DUPLICATE_ENTRY,
    /** Money in another currency than the price book's. */
    OTHER_CURRENCY
}
