"""Terms of Darwin Core and Audiovisual Core, by their full addresses, and the archive's tables.

Source: Darwin Core terms of 2026-05-26 (TDWG), text guide for archives; Audiovisual Core.
"""

from collections.abc import Mapping
from dataclasses import dataclass

DWC = "http://rs.tdwg.org/dwc/terms/"
DCTERMS = "http://purl.org/dc/terms/"
DC = "http://purl.org/dc/elements/1.1/"
AC = "http://rs.tdwg.org/ac/terms/"
XMP_RIGHTS = "http://ns.adobe.com/xap/1.0/rights/"


@dataclass(frozen=True, slots=True, kw_only=True)
class Table:
    """One file of an archive.

    Attributes:
        file: Its name.
        row_type: Address of the class its rows are.
        columns: Column name to address of its term; the first column ties rows to the core.
        constant: Address of a term to the value it has in every row.
    """

    file: str
    row_type: str
    columns: Mapping[str, str]
    constant: Mapping[str, str]


def _dwc(*names: str) -> dict[str, str]:
    return {name: DWC + name for name in names}


OCCURRENCE = Table(
    file="occurrence.csv",
    row_type=DWC + "Occurrence",
    columns=_dwc(
        "occurrenceID",
        "basisOfRecord",
        "organismID",
        "catalogNumber",
        "eventDate",
        "recordedBy",
        "individualCount",
        "sex",
        "lifeStage",
        "verbatimLabel",
        "scientificName",
        "scientificNameAuthorship",
        "taxonRank",
        "identificationQualifier",
        "verbatimIdentification",
        "previousIdentifications",
    ),
    constant={
        DWC + "degreeOfEstablishment": "captive",
        DWC + "occurrenceStatus": "detected",
        DWC + "nomenclaturalCode": "ICZN",
    },
)

IDENTIFICATION = Table(
    file="identification.csv",
    row_type=DWC + "Identification",
    columns=_dwc(
        "occurrenceID",
        "identificationID",
        "verbatimIdentification",
        "scientificName",
        "scientificNameAuthorship",
        "taxonRank",
        "identificationQualifier",
        "taxonFormula",
        "identificationType",
        "isAcceptedIdentification",
        "identifiedBy",
        "dateIdentified",
        "identificationReferences",
        "identificationVerificationStatus",
        "identificationRemarks",
    ),
    constant={DWC + "nomenclaturalCode": "ICZN"},
)

MEASUREMENT = Table(
    file="measurementorfact.csv",
    row_type=DWC + "MeasurementOrFact",
    columns=_dwc(
        "occurrenceID",
        "measurementID",
        "parentMeasurementID",
        "measurementType",
        "measurementValue",
        "measurementUnit",
        "measurementAccuracy",
        "measurementMethod",
        "measurementDeterminedBy",
        "measurementDeterminedDate",
        "measurementRemarks",
    ),
    constant={},
)

MEDIA = Table(
    file="multimedia.csv",
    row_type=AC + "Multimedia",
    columns={
        "occurrenceID": DWC + "occurrenceID",
        "identifier": DCTERMS + "identifier",
        "type": DCTERMS + "type",
        "creator": DC + "creator",
        "Owner": XMP_RIGHTS + "Owner",
        "caption": AC + "caption",
        "hashFunction": AC + "hashFunction",
        "hashValue": AC + "hashValue",
    },
    constant={},
)

TABLES = (OCCURRENCE, IDENTIFICATION, MEASUREMENT, MEDIA)
"""The core, then the extensions."""
