# Every example of the help is run, so that what people paste works.

BeforeDiscovery {
    $examples = foreach ($name in (Get-Module LayerTools).ExportedCmdlets.Keys | Sort-Object) {
        $number = 0
        foreach ($example in (Get-Help $name -Full).examples.example) { @{ Name = $name; Number = ++$number; Code = $example.code } }
    }
}

BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
}

Describe 'Examples' {
    BeforeEach {
        $folder = Join-Path $TestDrive ([guid]::NewGuid())
        Copy-Fixture groups-nested (Join-Path $folder 'hero.psd') > $null
        Copy-Fixture groups-nested (Join-Path $folder 'before/hero.psd') > $null
        Copy-Fixture ag-text (Join-Path $folder 'before/anna.psd') > $null
        Copy-Fixture groups-nested (Join-Path $folder 'incoming/anna.psd') > $null
        Copy-Fixture ag-marks-and-locks (Join-Path $folder 'incoming/ben.psd') > $null
        Copy-Fixture canvas-odd-width (Join-Path $folder 'incoming/chris.psd') > $null
        Copy-Fixture ag-text (Join-Path $folder 'incoming/dora.psd') > $null
        Push-Location -LiteralPath $folder
        $originals = Get-ChildItem -Recurse -Filter *.psd | Get-FileHash
    }

    AfterEach { Pop-Location }

    It '<Name>, example <Number>: <Code>' -ForEach $examples {
        $output = & ([scriptblock]::Create("`$ErrorActionPreference = 'Stop'; `$WarningPreference = 'SilentlyContinue'; $Code"))
        if ($Code -notmatch '-WhatIf|-Picture|Export-|Set-Content|\$_\.Width -eq 0|Width % 2') { $output | Should -Not -BeNullOrEmpty }
        foreach ($original in $originals) {
            if ($Code -match '-InPlace' -and $original.Path -like '*hero.psd') { continue }
            (Get-FileHash -LiteralPath $original.Path).Hash | Should -Be $original.Hash -Because 'originals are only touched with -InPlace'
        }
    }
}
