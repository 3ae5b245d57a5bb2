BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
    Push-Location -LiteralPath $TestDrive
    '{ "name": "good" }' | Set-Content good.layerprofile.json
    '{ "name": "odd", "canvas": { "width": 5001 }, "rules": { "OddCanvasWith": "note" } }' | Set-Content odd.layerprofile.json
    '{ "name": "doubtful", "stack": [ "hair-frnt" ] }' | Set-Content doubtful.layerprofile.json
}

AfterAll { Pop-Location }

Describe 'Test-LayerProfile' {
    It 'finds nothing wrong with what ships' {
        Get-LayerProfile | Test-LayerProfile | Should -BeNullOrEmpty
        Test-LayerProfile figure -Quiet | Should -BeTrue
    }

    It 'tells each error with its place and what to do' {
        $findings = Test-LayerProfile odd.layerprofile.json
        $findings.JsonPath | Should -Be '$.canvas.width', '$.rules.OddCanvasWith'
        "$($findings[0].Severity) $($findings[0].Line) $($findings[0].Column)" | Should -Be 'Error 1 39'
        $findings[0].Message | Should -Be 'The width of 5001 px is odd, and the profile wants an even one.'
        $findings[1].Remedy | Should -Be "Write 'OddCanvasWidth', if that is meant."
        $findings.FilePath | Should -Be (@(Join-Path $TestDrive 'odd.layerprofile.json') * 2)
    }

    It 'gives one bool a profile with -Quiet; doubts do not count' {
        Get-ChildItem *.layerprofile.json | Sort-Object Name | Test-LayerProfile -Quiet | Should -Be $true, $true, $false
        (Test-LayerProfile doubtful.layerprofile.json).Severity | Should -Be 'Warning'
    }

    It 'says of a profile that cannot be read that it is not good' {
        $result = Get-Streams { Test-LayerProfile nowhere.layerprofile.json, good.layerprofile.json -Quiet }
        $result.Output | Should -Be $false, $true
        $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'ProfileNotFound,*'
    }

    It 'shows itself in a table' {
        Test-LayerProfile odd.layerprofile.json | Out-String -Width 120 | Should -Match 'error +1 +39 \$\.canvas\.width'
    }

    It 'reads a profile that the published schema describes by its id' {
        '{ "$schema": "urn:layertools:layerprofile:1", "name": "by id" }' | Set-Content id.layerprofile.json
        Test-LayerProfile id.layerprofile.json | Should -BeNullOrEmpty
        Remove-Item id.layerprofile.json
    }

    It 'ships the schema and the profiles it knows' {
        $folder = Split-Path (Get-Module LayerTools).Path
        (Get-Content "$folder/layerprofile.schema.json" -Raw | ConvertFrom-Json).'$id' | Should -Be 'urn:layertools:layerprofile:1'
        Get-ChildItem "$folder/Profiles" | Test-LayerProfile | Should -BeNullOrEmpty
        (Get-ChildItem "$folder/Profiles").Count | Should -Be @(Get-LayerProfile).Count
    }
}
