"""Cases as a Darwin Core Archive: for collections, studies and authorities."""

import csv
import io
import re
import uuid
import xml.etree.ElementTree as ET
import zipfile
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from enum import Enum
from html import escape
from pathlib import Path

from idkey.errors import IdKeyError
from idkey.report.dwc_rows import (
    ArchivedCase,
    Row,
    identifications,
    measurements,
    media,
    occurrence,
)
from idkey.report.dwc_terms import (
    DCTERMS,
    IDENTIFICATION,
    MEASUREMENT,
    MEDIA,
    OCCURRENCE,
    TABLES,
    Table,
)

TEXT_NAMESPACE = "http://rs.tdwg.org/dwc/text/"
XSI = "http://www.w3.org/2001/XMLSchema-instance"
_NOT_XML = re.compile("[^\t\n\x20-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")


class Licence(Enum):
    """Licences that aggregators take, as (name, address)."""

    CC0 = ("CC0 1.0", "https://creativecommons.org/publicdomain/zero/1.0/legalcode")
    BY = ("CC BY 4.0", "https://creativecommons.org/licenses/by/4.0/legalcode")
    BY_NC = ("CC BY-NC 4.0", "https://creativecommons.org/licenses/by-nc/4.0/legalcode")


@dataclass(frozen=True, slots=True, kw_only=True)
class Dataset:
    """What an archive says about itself.

    Attributes:
        title: Title.
        owner: Who publishes it, as the name of an organisation.
        published: Day, ISO 8601.
        abstract: What it holds, in a sentence or two.
        licence: Under which terms.
    """

    title: str
    owner: str
    published: str
    abstract: str = (
        "Animals from trade, with the label they came under and what they were found to be."
    )
    licence: Licence = Licence.CC0


def write_archive(path: Path, cases: Sequence[ArchivedCase], dataset: Dataset) -> None:
    """Write cases as a Darwin Core Archive.

    Args:
        path: The zip file to write.
        cases: In order; each case once.
        dataset: What the archive says about itself.

    Raises:
        IdKeyError: There are no cases, one comes twice, or it cannot be written there.
    """
    content = archive_bytes(cases, dataset)
    try:
        path.write_bytes(content)
    except OSError as err:
        raise IdKeyError(
            f"{path} cannot be written: {err.strerror or err}.", "Choose another folder."
        ) from err


def archive_bytes(cases: Sequence[ArchivedCase], dataset: Dataset) -> bytes:
    """The same as bytes; equal cases give equal bytes."""
    ids = [one.current.case.id for one in cases]
    if not ids:
        raise IdKeyError("There is no case to export.", "Choose at least one case.")
    if len(set(ids)) < len(ids):
        raise IdKeyError("A case is chosen twice.", "Choose each case once.")
    rows: dict[str, list[Row]] = {
        OCCURRENCE.file: [occurrence(one) for one in cases],
        IDENTIFICATION.file: [row for one in cases for row in identifications(one)],
        MEASUREMENT.file: [row for one in cases for row in measurements(one)],
        MEDIA.file: [row for one in cases for row in media(one, dataset.owner)],
    }
    texts = {table.file: table_text(table, rows[table.file]) for table in TABLES}
    texts["meta.xml"] = meta_xml(dataset)
    texts["eml.xml"] = eml_xml(dataset, "\n".join(texts.values()))
    packed = io.BytesIO()
    with zipfile.ZipFile(packed, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, text in texts.items():
            entry = zipfile.ZipInfo(name, date_time=(1980, 1, 1, 0, 0, 0))
            entry.compress_type = zipfile.ZIP_DEFLATED
            archive.writestr(entry, text.encode("utf-8"))
    return packed.getvalue()


def table_text(table: Table, rows: Iterable[Row]) -> str:
    """Rows as comma-separated text with a header line."""
    text = io.StringIO()
    writer = csv.writer(text, lineterminator="\n", quoting=csv.QUOTE_ALL)
    writer.writerow(table.columns)
    for row in rows:
        writer.writerow([_clean(row.get(name, "")) for name in table.columns])
    return text.getvalue()


def _clean(text: str) -> str:
    """The text with one kind of line end and without signs that no file can hold."""
    return _NOT_XML.sub("\ufffd", text.replace("\r\n", "\n").replace("\r", "\n"))


def meta_xml(dataset: Dataset) -> str:
    """The file that says what the columns mean."""
    ET.register_namespace("", TEXT_NAMESPACE)
    root = ET.Element(_tag("archive"), {"metadata": "eml.xml"})
    core, *extensions = TABLES
    licensed = {**core.constant, DCTERMS + "license": dataset.licence.value[1]}
    _described(root, "core", replace(core, constant=licensed))
    for table in extensions:
        _described(root, "extension", table)
    ET.indent(root)
    return '<?xml version="1.0" encoding="UTF-8"?>\n' + ET.tostring(root, encoding="unicode") + "\n"


def _tag(name: str) -> str:
    return f"{{{TEXT_NAMESPACE}}}{name}"


def _described(root: ET.Element, kind: str, table: Table) -> None:
    form = {
        "encoding": "UTF-8",
        "fieldsTerminatedBy": ",",
        "linesTerminatedBy": "\\n",
        "fieldsEnclosedBy": '"',
        "ignoreHeaderLines": "1",
        "rowType": table.row_type,
    }
    element = ET.SubElement(root, _tag(kind), form)
    files = ET.SubElement(element, _tag("files"))
    ET.SubElement(files, _tag("location")).text = table.file
    ET.SubElement(element, _tag("id" if kind == "core" else "coreid"), {"index": "0"})
    for number, term in enumerate(table.columns.values()):
        if number or kind == "core":
            ET.SubElement(element, _tag("field"), {"index": str(number), "term": term})
    for term, value in table.constant.items():
        ET.SubElement(element, _tag("field"), {"term": term, "default": value})


_EML = """<?xml version="1.0" encoding="UTF-8"?>
<eml:eml xmlns:eml="https://eml.ecoinformatics.org/eml-2.2.0"
  packageId="{package}" system="idkey" scope="system" xml:lang="en">
  <dataset>
    <title xml:lang="en">{title}</title>
    <creator><organizationName>{owner}</organizationName></creator>
    <pubDate>{published}</pubDate>
    <language>en</language>
    <abstract><para>{abstract}</para></abstract>
    <intellectualRights><para>Released under
      <ulink url="{address}"><citetitle>{licence}</citetitle></ulink>.</para></intellectualRights>
    <contact><organizationName>{owner}</organizationName></contact>
  </dataset>
</eml:eml>
"""


def eml_xml(dataset: Dataset, content: str) -> str:
    """The file about the archive, in EML 2.2; `content` makes its identifier."""
    name, address = dataset.licence.value
    texts = {
        "title": dataset.title,
        "owner": dataset.owner,
        "published": dataset.published,
        "abstract": dataset.abstract,
        "address": address,
        "licence": name,
        "package": f"urn:uuid:{uuid.uuid5(uuid.NAMESPACE_URL, _clean(content))}/v1",
    }
    return _EML.format(**{key: escape(_clean(text)) for key, text in texts.items()})
