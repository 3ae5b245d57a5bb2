# Every block of commands in the README is run, and every profile in it is checked, so that what people paste works.

BeforeDiscovery {
    $readme = Get-Content -LiteralPath "$PSScriptRoot/../../README.md" -Raw
    # Installing is left out: it builds the module that is being tested, and writes to the user's own folder.
    $blocks = foreach ($match in [regex]::Matches($readme, '(?ms)^```powershell\r?\n(?<code>.+?)^```')) {
        $code = $match.Groups['code'].Value
        if ($code -notmatch 'build\.ps1') { @{ Code = $code; First = ($code -split '\r?\n')[0] } }
    }
    $profiles = foreach ($match in [regex]::Matches($readme, '(?ms)^```json\r?\n(?<json>.+?)^```')) { @{ Json = $match.Groups['json'].Value } }
}

BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
}

Describe 'README' {
    BeforeEach {
        $folder = Join-Path $TestDrive ([guid]::NewGuid())
        foreach ($path in 'hero.psd', 'approved.psd', 'handover/hero.psd', 'before/hero.psd', 'incoming/anna.psd', 'incoming/hero.psd', 'clients/nora/hero.psd', 'clients/omar/keeper.psd', 'production/one/hero.psd') {
            Copy-Fixture groups-nested (Join-Path $folder $path) > $null
        }
        Copy-Fixture canvas-odd-width (Join-Path $folder 'odd.psd') > $null
        New-Item -ItemType Directory (Join-Path $folder 'production/two') > $null
        Set-Content -LiteralPath (Join-Path $folder 'production/two/broken.psd') -Value 'no layered file'
        Set-Content -LiteralPath (Join-Path $folder 'house-names.csv') -Value 'Old,New', 'Body,Torso' -Encoding utf8
        Push-Location -LiteralPath $folder
        Get-LayerFile hero.psd | Export-LayerLedger -Destination ben.layerledger.json > $null
        New-LayerProfile -FromFile approved.psd -Destination studio.layerprofile.json -WarningAction Ignore > $null
    }

    AfterEach { Pop-Location }

    It 'runs "<First>"' -ForEach $blocks {
        if ($Code -match '-Destination \.\\handover') { Remove-Item -LiteralPath handover -Recurse }
        if ($Code -match 'New-LayerProfile') { Remove-Item -LiteralPath studio.layerprofile.json }
        $originals = Get-ChildItem -Recurse -Filter *.psd | Get-FileHash
        # One file of the studio cannot be read, on purpose; everywhere else an error is a mistake of the README.
        $preference = if ($Code -match '\\production\\') { 'SilentlyContinue' } else { 'Stop' }
        # To exit would end the tests.
        $runnable = $Code -replace 'exit 1', "'exit 1'"
        $output = & ([scriptblock]::Create("`$ErrorActionPreference = '$preference'; `$WarningPreference = 'SilentlyContinue'; $runnable"))
        if ($Code -match 'exit 1') { $output | Should -Contain 'exit 1' }
        foreach ($original in $originals) {
            if ($Code -match '-InPlace' -and $original.Path -match 'clients') { continue }
            (Get-FileHash -LiteralPath $original.Path).Hash | Should -Be $original.Hash -Because 'originals are only touched with -InPlace'
        }
    }

    It 'shows a profile without slips' -ForEach $profiles {
        Set-Content -LiteralPath shown.layerprofile.json -Value $Json -Encoding utf8
        Test-LayerProfile shown.layerprofile.json | Should -BeNullOrEmpty
    }

    It 'names every cmdlet' {
        $readme = Get-Content -LiteralPath "$PSScriptRoot/../../README.md" -Raw
        foreach ($name in (Get-Module LayerTools).ExportedCmdlets.Keys) { $readme | Should -Match "``$name``" }
    }
}
